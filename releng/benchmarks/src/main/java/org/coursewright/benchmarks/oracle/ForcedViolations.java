package org.coursewright.benchmarks.oracle;

import java.util.ArrayList;
import java.util.List;

import org.coursewright.bond.JointRule;
import org.coursewright.bond.RunEnd;

/**
 * Laps that no layout can keep, because joints at the ends of runs lie where they lie: a tied end puts a joint over a
 * joint in every course, and so does a lintel two courses high.
 */
final class ForcedViolations {

    private ForcedViolations() {
    }

    /** @return how many pairs of end joints lap too little even if every joint is as narrow as it may be */
    static int count(List<Stretch> stretches, JointRule rule) {
        int count = 0;
        for (Stretch lower : stretches) {
            for (Stretch upper : stretches) {
                if (upper.course() == lower.course() + 1) {
                    count += count(endJoints(lower, rule), endJoints(upper, rule), rule.leastLap().units());
                }
            }
        }
        return count;
    }

    private static int count(List<HeadJoint> lower, List<HeadJoint> upper, long leastLap) {
        return (int) lower.stream()
                .mapToLong(one -> upper.stream().filter(other -> one.lapsShort(other, leastLap)).count()).sum();
    }

    private static List<HeadJoint> endJoints(Stretch stretch, JointRule rule) {
        long least = rule.least().units();
        List<HeadJoint> joints = new ArrayList<>();
        if (stretch.start() == RunEnd.JOINT) {
            joints.add(new HeadJoint(stretch.from(), stretch.from() + least, 1));
        }
        if (stretch.end() == RunEnd.JOINT) {
            joints.add(new HeadJoint(stretch.to() - least, stretch.to(), 1));
        }
        return joints;
    }
}
