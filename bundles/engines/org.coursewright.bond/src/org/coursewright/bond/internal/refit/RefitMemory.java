package org.coursewright.bond.internal.refit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.RunShape;

/**
 * What has been found of runs of one masonry while walls were fitted to changes: the same runs come up for many values of a
 * dimension, in courses laid alike, and again when another dimension changes too.
 */
final class RefitMemory {

    /** So many are kept at most; ways to fill long runs take some ten kilobytes each. */
    private static final int MOST_SHAPES = 10_000;
    private static final int MOST_WAYS = 600;
    private static final int MOST_LAPS = 6_000;

    /** A run that was filled, if it was, and is of another shape now. */
    private record Change(RefitShape shape, Optional<RefitWays> before) {
    }

    /** Two runs one over the other. */
    private record Pair(RefitWays below, RefitWays above, long offset) {
    }

    private final Masonry masonry;
    private final Map<RunShape, RefitShape> shapes = new HashMap<>();
    private final Map<RefitShape, List<long[]>> fewest = new HashMap<>();
    private final Map<Change, RefitWays> ways = new HashMap<>();
    private final Map<Pair, RefitLaps> laps = new HashMap<>();

    RefitMemory(Masonry masonry) {
        this.masonry = masonry;
    }

    Masonry masonry() {
        return masonry;
    }

    RefitShape shape(RunShape shape) {
        if (shapes.size() >= MOST_SHAPES) {
            shapes.clear();
        }
        return shapes.computeIfAbsent(shape, each -> new RefitShape(each, masonry));
    }

    /**
     * Ways to fill a run.
     *
     * @param shape of the run, one that can be filled
     * @param before the one way in which it was filled when it was longer or shorter, empty if it was not
     * @return the ways, none if none is found
     */
    RefitWays ways(RefitShape shape, Optional<RefitWays> before) {
        if (ways.size() >= MOST_WAYS) {
            ways.clear();
            fewest.clear();
            laps.clear();
        }
        return ways.computeIfAbsent(new Change(shape, before), this::find);
    }

    private RefitWays find(Change change) {
        RunShape shape = change.shape().shape();
        List<long[]> orders = fewest.computeIfAbsent(change.shape(), each -> new FewestCuts(shape, masonry).orders());
        return new RefitWays(
                new RunRefit(change.before().map(RefitWays::pattern), shape, masonry, orders).patterns());
    }

    /** @param offset where the run above begins, measured from the start of the one below */
    RefitLaps laps(RefitWays below, RefitWays above, long offset) {
        if (laps.size() >= MOST_LAPS) {
            laps.clear();
        }
        return laps.computeIfAbsent(new Pair(below, above, offset),
                pair -> new RefitLaps(below, above, offset, masonry.lap()));
    }
}
