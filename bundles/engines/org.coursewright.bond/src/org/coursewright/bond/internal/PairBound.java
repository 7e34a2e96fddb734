package org.coursewright.bond.internal;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Proves how many more cuts two runs of consecutive courses need together than each needs alone, because of the laps
 * between them.
 */
final class PairBound {

    private static final int MOST_EXTRA = 2;
    private static final long STEPS = 1_500_000;

    private record Pair(RunShape below, RunShape above, long offset) {
    }

    private record Level(RunShape shape, int cuts) {
    }

    private final Masonry masonry;
    private final Map<Pair, Integer> known = new HashMap<>();
    private final Map<Level, Optional<List<PieceSet>>> sets = new HashMap<>();

    PairBound(Masonry masonry) {
        this.masonry = masonry;
    }

    /** Cuts beyond the least of both runs that every filling without avoidable lap violations needs. */
    int extra(PatternPool below, PatternPool above, long offset) {
        return known.computeIfAbsent(new Pair(below.shape(), above.shape(), offset),
                pair -> prove(below, above, offset));
    }

    private int prove(PatternPool below, PatternPool above, long offset) {
        PairFit fit = new PairFit(masonry, below.shape(), above.shape(), offset, STEPS);
        for (int extra = 0; extra < MOST_EXTRA; extra++) {
            for (int part = 0; part <= extra; part++) {
                if (mayFit(fit, below, below.leastCuts() + part, above, above.leastCuts() + extra - part)) {
                    return extra;
                }
            }
        }
        return MOST_EXTRA;
    }

    /** Whether some filling with so many cuts keeps the laps, or that is not known. */
    private boolean mayFit(PairFit fit, PatternPool below, int cutsBelow, PatternPool above, int cutsAbove) {
        Optional<List<PieceSet>> lower = sets(below, cutsBelow);
        Optional<List<PieceSet>> upper = sets(above, cutsAbove);
        if (lower.isEmpty() || upper.isEmpty()) {
            return true;
        }
        for (PieceSet one : lower.get()) {
            for (PieceSet other : upper.get()) {
                if (fit.fits(one, other)) {
                    return true;
                }
            }
        }
        return false;
    }

    private Optional<List<PieceSet>> sets(PatternPool pool, int cuts) {
        return sets.computeIfAbsent(new Level(pool.shape(), cuts),
                level -> PieceSets.all(level.shape(), masonry, level.cuts()));
    }
}
