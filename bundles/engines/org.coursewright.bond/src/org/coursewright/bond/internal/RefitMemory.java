package org.coursewright.bond.internal;

import java.util.HashMap;
import java.util.Map;

/**
 * What has been found of runs of one masonry while walls were fitted to changes: the same runs come up for many values of a
 * dimension, in courses laid alike, and again when another dimension changes too.
 */
final class RefitMemory {

    /** So many are kept at most, some megabytes of each. */
    private static final int MOST_SHAPES = 2_000;
    private static final int MOST_LAPS = 50_000;

    /** Two runs one over the other. */
    private record Pair(RefitWays below, RefitWays above, long offset) {
    }

    private final Masonry masonry;
    private final Map<RunShape, RefitShape> shapes = new HashMap<>();
    private final Map<Pair, RefitLaps> laps = new HashMap<>();

    RefitMemory(Masonry masonry) {
        this.masonry = masonry;
    }

    Masonry masonry() {
        return masonry;
    }

    RefitShape shape(RunShape shape) {
        return bounded(shapes, MOST_SHAPES).computeIfAbsent(shape, each -> new RefitShape(each, masonry));
    }

    /** @param offset where the run above begins, measured from the start of the one below */
    RefitLaps laps(RefitWays below, RefitWays above, long offset) {
        return bounded(laps, MOST_LAPS).computeIfAbsent(new Pair(below, above, offset),
                pair -> new RefitLaps(below, above, offset, masonry.lap()));
    }

    private static <K, V> Map<K, V> bounded(Map<K, V> map, int most) {
        if (map.size() >= most) {
            map.clear();
        }
        return map;
    }
}
