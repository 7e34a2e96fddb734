package org.coursewright.bond.internal.refit;

import org.coursewright.bond.internal.pieces.PieceSets;
import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.RunShape;

/** What has been found of runs of one shape. */
final class RefitShape {

    private final RunShape shape;
    private final int leastCuts;

    RefitShape(RunShape shape, Masonry masonry) {
        this.shape = shape;
        leastCuts = new PieceSets(shape, masonry).leastCuts().orElse(-1);
    }

    RunShape shape() {
        return shape;
    }

    /** Cuts that every filling needs, zero if nothing fills such a run. */
    int leastCuts() {
        return Math.max(0, leastCuts);
    }

    boolean isFillable() {
        return leastCuts >= 0;
    }

    boolean isSame(RefitShape other) {
        return this == other || shape.equals(other.shape);
    }
}
