package org.coursewright.bond.internal.lap;

import org.coursewright.bond.RunEnd;
import org.coursewright.bond.internal.run.RunSpan;

/**
 * Counts joints that two runs of consecutive courses have over one another because both end at the same place against
 * other masonry. No filling can lap them.
 */
public final class StraightJoints {

    private StraightJoints() {
    }

    /** How many there are between two runs, two at most. */
    public static int between(RunSpan below, RunSpan above) {
        boolean atStart = below.start() == RunEnd.JOINT && above.start() == RunEnd.JOINT
                && below.from() == above.from();
        boolean atEnd = below.end() == RunEnd.JOINT && above.end() == RunEnd.JOINT && below.to() == above.to();
        return (atStart ? 1 : 0) + (atEnd ? 1 : 0);
    }
}
