package org.coursewright.cli;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * A head joint at an exact place: its edges are {@code from / parts} and {@code to / parts} (mm).
 *
 * @param from near edge, times {@code parts}
 * @param to far edge, times {@code parts}
 * @param parts joints in its run
 */
record RecountedJoint(BigDecimal from, BigDecimal to, BigDecimal parts) {

    /** The joints of a run, {@code count} equal parts of {@code rest}. */
    static List<RecountedJoint> ofRun(BigDecimal start, List<BigDecimal> pieces, BigDecimal rest, int count,
            boolean startsWithJoint, boolean endsWithJoint) {
        BigDecimal parts = BigDecimal.valueOf(count);
        List<RecountedJoint> joints = new ArrayList<>();
        BigDecimal at = start.multiply(parts);
        for (int i = 0; i <= pieces.size(); i++) {
            if (i > 0 && i < pieces.size() || i == 0 && startsWithJoint || i == pieces.size() && endsWithJoint) {
                joints.add(new RecountedJoint(at, at.add(rest), parts));
                at = at.add(rest);
            }
            if (i < pieces.size()) {
                at = at.add(pieces.get(i).multiply(parts));
            }
        }
        return joints;
    }

    /** Whether the gap between the two joints, edge to edge, is less than the lap; compared without dividing. */
    boolean lapsLess(RecountedJoint other, BigDecimal lap) {
        BigDecimal both = parts.multiply(other.parts);
        BigDecimal after = from.multiply(other.parts).subtract(other.to.multiply(parts));
        BigDecimal before = other.from.multiply(parts).subtract(to.multiply(other.parts));
        return after.max(before).compareTo(lap.multiply(both)) < 0;
    }
}
