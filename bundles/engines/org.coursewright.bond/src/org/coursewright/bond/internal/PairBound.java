package org.coursewright.bond.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds out which choices of two runs of consecutive courses go together. What cannot is proven; what can, where it is
 * found, is shown by a pattern for each, which both pools learn.
 */
final class PairBound {

    private static final long STEPS = 200_000;

    private record Pair(RunShape below, RunShape above, long offset, List<Long> round, List<Long> roundOther) {
    }

    private record Level(RunShape shape, int cuts) {
    }

    private final RunStack stack;
    private final Masonry masonry;
    private final Skeleton skeleton;
    private final Map<RunShape, List<RunChoice>> choices = new HashMap<>();
    private final Map<Pair, boolean[]> known = new HashMap<>();
    private final Map<Level, Optional<List<PieceSet>>> sets = new HashMap<>();

    PairBound(RunStack stack) {
        this.stack = stack;
        masonry = stack.masonry();
        skeleton = stack.skeleton();
    }

    List<RunChoice> choices(PatternPool pool) {
        return choices.computeIfAbsent(pool.shape(), shape -> RunChoice.of(pool));
    }

    /**
     * Which choices cannot go together without an avoidable lap violation.
     *
     * @return by choice of the lower run, then of the upper; {@code true} is proven
     */
    boolean[] excluded(RunStack.Contact contact) {
        Pair key = new Pair(stack.pool(contact.below()).shape(), stack.pool(contact.above()).shape(), contact.offset(),
                skeleton.joints(contact.below(), contact.above()), skeleton.joints(contact.above(), contact.below()));
        return known.computeIfAbsent(key, pair -> new Proof(contact).excluded());
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

    /** The proof for one pair of shapes. */
    private final class Proof {
        private final RunStack.Contact contact;
        private final PatternPool below;
        private final PatternPool above;
        private final long offset;
        private final List<RunChoice> lower;
        private final List<RunChoice> upper;
        private final boolean[] excluded;

        Proof(RunStack.Contact contact) {
            this.contact = contact;
            below = stack.pool(contact.below());
            above = stack.pool(contact.above());
            offset = contact.offset();
            lower = choices(below);
            upper = choices(above);
            excluded = new boolean[lower.size() * upper.size()];
        }

        boolean[] excluded() {
            for (int row = 0; row < lower.size(); row++) {
                Optional<Pattern> pattern = lower.get(row).pattern();
                if (pattern.isPresent()) {
                    excludeBeside(row, pattern.get());
                }
            }
            for (int column = 0; column < upper.size(); column++) {
                Optional<Pattern> pattern = upper.get(column).pattern();
                if (pattern.isPresent()) {
                    excludeUnder(column, pattern.get());
                }
            }
            excludeLevels();
            return excluded;
        }

        private void excludeBeside(int row, Pattern pattern) {
            int least = -1;
            for (int column = 0; column < upper.size(); column++) {
                RunChoice other = upper.get(column);
                if (other.pattern().isPresent()) {
                    exclude(row, column, LapCheck.violations(pattern, other.pattern().get(), offset,
                            masonry.lap()) > skeleton.allowed(contact));
                } else {
                    least = least < 0 ? least(contact.above(), pattern) : least;
                    exclude(row, column, other.extra() < least);
                }
            }
        }

        private void excludeUnder(int column, Pattern pattern) {
            int least = -1;
            for (int row = 0; row < lower.size(); row++) {
                RunChoice other = lower.get(row);
                if (other.pattern().isEmpty()) {
                    least = least < 0 ? least(contact.below(), pattern) : least;
                    exclude(row, column, other.extra() < least);
                }
            }
        }

        private void exclude(int row, int column, boolean proven) {
            excluded[row * upper.size() + column] = proven;
        }

        /** Extra cuts that a run needs beside a pattern of the other. */
        private int least(int run, Pattern beside) {
            Windows windows = skeleton.certain(run, contact.other(run));
            windows.add(beside, contact.offsetFrom(run), masonry.lap(), stack.pool(run).shape().length());
            return stack.pool(run).extraCuts(windows, skeleton.forced(run), RunChoice.MOST_EXTRA);
        }

        /** Whatever fits with few cuts is taken to fit with more, so most pairs are settled by one look. */
        private void excludeLevels() {
            PairFit fit = new PairFit(masonry, below.shape(), above.shape(), offset,
                    skeleton.certain(contact.below(), contact.above()),
                    skeleton.certain(contact.above(), contact.below()), STEPS);
            boolean none = exclude(fit, 0, 0);
            boolean one = none && exclude(fit, 0, 1) & exclude(fit, 1, 0);
            if (one) {
                exclude(fit, 1, 1);
            }
        }

        /** @return whether it is excluded, or not a question of levels alone */
        private boolean exclude(PairFit fit, int extraBelow, int extraAbove) {
            int row = level(lower, extraBelow);
            int column = level(upper, extraAbove);
            if (row < 0 || column < 0) {
                return true;
            }
            boolean proven = !mayFit(fit, extraBelow, extraAbove);
            exclude(row, column, proven);
            return proven;
        }

        private static int level(List<RunChoice> choices, int extra) {
            for (int index = 0; index < choices.size(); index++) {
                if (choices.get(index).pattern().isEmpty() && choices.get(index).extra() == extra) {
                    return index;
                }
            }
            return -1;
        }

        /** Whether some filling with so many extra cuts keeps the laps, or that is not known. */
        private boolean mayFit(PairFit fit, int extraBelow, int extraAbove) {
            int cutsBelow = below.leastCuts() + extraBelow;
            int cutsAbove = above.leastCuts() + extraAbove;
            if (below.shape().isRaked() || above.shape().isRaked() || skeleton.allowed(contact) > contact.forced()) {
                return true;
            }
            Optional<List<PieceSet>> lowerSets = sets(below, cutsBelow);
            Optional<List<PieceSet>> upperSets = sets(above, cutsAbove);
            for (PieceSet one : lowerSets.orElseGet(() -> below.sets(cutsBelow))) {
                for (PieceSet other : upperSets.orElseGet(() -> above.sets(cutsAbove))) {
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
            return lowerSets.isEmpty() || upperSets.isEmpty() || fit.hasSkipped();
        }
    }
}
