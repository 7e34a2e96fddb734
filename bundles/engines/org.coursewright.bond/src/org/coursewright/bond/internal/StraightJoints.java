package org.coursewright.bond.internal;

import org.coursewright.bond.RunEnd;

/**
 * Counts joints that two runs of consecutive courses have over one another because both end at the same place against
 * other masonry. No filling can lap them.
 */
final class StraightJoints {

    private StraightJoints() {
    }

    static int between(RunSpan below, RunSpan above) {
        boolean atStart = below.start() == RunEnd.JOINT && above.start() == RunEnd.JOINT
                && below.from() == above.from();
        boolean atEnd = below.end() == RunEnd.JOINT && above.end() == RunEnd.JOINT && below.to() == above.to();
        return (atStart ? 1 : 0) + (atEnd ? 1 : 0);
    }
}
