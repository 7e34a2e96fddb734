package org.coursewright.bond.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds out with how many cuts beyond their least two runs of consecutive courses can be filled together. What cannot be
 * is proven; what can be is shown by a pattern for each, which both pools learn. Two or more extra cuts in a run are
 * taken to suit everything.
 */
final class PairBound {

    /** Numbers of extra cuts told apart: none, one, two or more. */
    static final int LEVELS = 3;

    private static final long STEPS = 600_000;

    private record Pair(RunShape below, RunShape above, long offset) {
    }

    private record Level(RunShape shape, int cuts) {
    }

    private final Masonry masonry;
    private final Map<Pair, boolean[]> known = new HashMap<>();
    private final Map<Level, Optional<List<PieceSet>>> sets = new HashMap<>();

    PairBound(Masonry masonry) {
        this.masonry = masonry;
    }

    /**
     * Which extra cuts cannot go together without an avoidable lap violation.
     *
     * @return by extra cuts of the lower run, then of the upper; {@code true} is proven
     */
    boolean[] excluded(PatternPool below, PatternPool above, long offset) {
        return known.computeIfAbsent(new Pair(below.shape(), above.shape(), offset),
                pair -> prove(below, above, offset));
    }

    /** Whatever fits with few cuts is taken to fit with more, so most pairs are settled by one look. */
    private boolean[] prove(PatternPool below, PatternPool above, long offset) {
        PairFit fit = new PairFit(masonry, below.shape(), above.shape(), offset, STEPS);
        boolean[] excluded = new boolean[LEVELS * LEVELS];
        excluded[0] = !mayFit(fit, below, 0, above, 0);
        if (excluded[0]) {
            excluded[1] = !mayFit(fit, below, 0, above, 1);
            excluded[LEVELS] = !mayFit(fit, below, 1, above, 0);
            excluded[LEVELS + 1] = excluded[1] && excluded[LEVELS] && !mayFit(fit, below, 1, above, 1);
        }
        return excluded;
    }

    /** Whether some filling with so many extra cuts keeps the laps, or that is not known. */
    private boolean mayFit(PairFit fit, PatternPool below, int extraBelow, PatternPool above, int extraAbove) {
        int cutsBelow = below.leastCuts() + extraBelow;
        int cutsAbove = above.leastCuts() + extraAbove;
        if (below.shape().isRaked() || above.shape().isRaked()) {
            return true;
        }
        Optional<List<PieceSet>> lower = sets(below, cutsBelow);
        Optional<List<PieceSet>> upper = sets(above, cutsAbove);
        for (PieceSet one : lower.orElseGet(() -> below.sets(cutsBelow))) {
            for (PieceSet other : upper.orElseGet(() -> above.sets(cutsAbove))) {
                Optional<List<Pattern>> patterns = fit.fit(one, other);
                if (patterns.isPresent()) {
                    below.add(patterns.get().get(0));
                    above.add(patterns.get().get(1));
                }
                if (patterns.isPresent() || fit.isExhausted()) {
                    return true;
                }
            }
        }
        return lower.isEmpty() || upper.isEmpty() || fit.hasSkipped();
    }

    private Optional<List<PieceSet>> sets(PatternPool pool, int cuts) {
        return sets.computeIfAbsent(new Level(pool.shape(), cuts),
                level -> PieceSets.all(level.shape(), masonry, level.cuts()).map(this::preferredFirst));
    }

    private List<PieceSet> preferredFirst(List<PieceSet> all) {
        List<PieceSet> sorted = new ArrayList<>(all);
        sorted.sort(Comparator.comparingInt(set -> Preference.of(masonry, set)));
        return sorted;
    }
}
