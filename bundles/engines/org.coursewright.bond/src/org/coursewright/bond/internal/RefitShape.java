package org.coursewright.bond.internal;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What has been found of runs of one shape. */
final class RefitShape {

    private final RunShape shape;
    private final Masonry masonry;
    private final int leastCuts;
    private final Map<RefitWays, RefitWays> ways = new IdentityHashMap<>();
    private List<long[]> fewest = List.of();

    RefitShape(RunShape shape, Masonry masonry) {
        this.shape = shape;
        this.masonry = masonry;
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

    /**
     * Ways to fill such a run.
     *
     * @param before the one way in which a run of the same ends but another length was filled, null if it was not
     * @return the ways, null if nothing fills such a run
     */
    RefitWays ways(RefitWays before) {
        if (!isFillable()) {
            return null;
        }
        if (ways.isEmpty()) {
            fewest = new FewestCuts(shape, masonry).orders();
        }
        return ways.computeIfAbsent(before, this::find);
    }

    private RefitWays find(RefitWays before) {
        return new RefitWays(
                new RunRefit(Optional.ofNullable(before).map(RefitWays::pattern), shape, masonry, fewest).patterns());
    }
}
