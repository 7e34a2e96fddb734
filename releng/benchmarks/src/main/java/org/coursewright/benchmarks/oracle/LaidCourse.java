package org.coursewright.benchmarks.oracle;

import java.util.ArrayList;
import java.util.List;

/**
 * One way to lay a course or a run of it.
 *
 * @param joints its head joints
 * @param cuts its cut pieces
 */
record LaidCourse(List<HeadJoint> joints, int cuts) {

    static final LaidCourse EMPTY = new LaidCourse(List.of(), 0);

    LaidCourse with(LaidCourse other) {
        List<HeadJoint> both = new ArrayList<>(joints);
        both.addAll(other.joints);
        return new LaidCourse(both, cuts + other.cuts);
    }

    int shortLaps(LaidCourse below, long leastLap) {
        int count = 0;
        for (HeadJoint joint : joints) {
            for (HeadJoint other : below.joints) {
                count += joint.lapsShort(other, leastLap) ? 1 : 0;
            }
        }
        return count;
    }
}
