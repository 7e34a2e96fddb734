package org.coursewright.bond.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Patterns considered for all runs of one shape in one wall. It grows as patterns that fit neighbours are found. */
final class PatternPool {

    /** Pieces cut to length that are tried where fewer do not fit the neighbours. */
    static final int MOST_CUTS = 3;
    private static final int ENOUGH_SPECIALS = 2;

    private final RunShape shape;
    private final Masonry masonry;
    private final PieceSets pieceSets;
    private final int leastCuts;
    private final List<Pattern> patterns = new ArrayList<>();
    private final Map<Pattern, Integer> places = new HashMap<>();
    private final Map<Integer, List<PieceSet>> setsByCuts = new HashMap<>();

    /** @param leastCuts what {@link PieceSets#leastCuts} gave for the shape */
    PatternPool(RunShape shape, Masonry masonry, int leastCuts) {
        this.shape = shape;
        this.masonry = masonry;
        this.leastCuts = leastCuts;
        pieceSets = new PieceSets(shape, masonry);
        new SeedPatterns(shape, masonry).of(this).forEach(this::add);
    }

    RunShape shape() {
        return shape;
    }

    /** No pattern of this shape has fewer cuts; proven. */
    int leastCuts() {
        return leastCuts;
    }

    List<Pattern> patterns() {
        return patterns;
    }

    /** @return whether the pattern is new */
    boolean add(Pattern pattern) {
        if (places.putIfAbsent(pattern, patterns.size()) != null) {
            return false;
        }
        patterns.add(pattern);
        return true;
    }

    /** Sets of pieces with so many of them cut to length, the preferred first. */
    List<PieceSet> sets(int cuts) {
        return setsByCuts.computeIfAbsent(cuts, count -> {
            List<PieceSet> few = pieceSets.withCuts(count, ENOUGH_SPECIALS);
            List<PieceSet> sets = new ArrayList<>(
                    few.isEmpty() || count == 0 ? pieceSets.withCuts(count, Integer.MAX_VALUE) : few);
            sets.sort(Comparator.comparingInt(set -> Preference.of(masonry, set)));
            return sets;
        });
    }

    /** Fewest pieces cut to length, besides those that end at a rake, that fill the run. */
    int leastLengthCuts() {
        for (int cuts = 0;; cuts++) {
            if (!sets(cuts).isEmpty() || cuts > shape.length() / masonry.cutLeast()) {
                return cuts;
            }
        }
    }

    /**
     * The pattern that meets the fewest windows and has, among these, the fewest cuts, then the best preference.
     *
     * @param leastViolations windows that every pattern meets
     * @param mostViolations patterns that meet more windows are not wanted
     * @param mostCuts pieces cut to length that are tried, or the fewest that fill the run
     * @param fewerCuts patterns with as many cuts are not wanted, if they meet {@code mostViolations} windows or more
     */
    Optional<Pattern> price(Windows windows, int leastViolations, int mostViolations, int fewerCuts, int mostCuts) {
        for (int violations = leastViolations; violations <= mostViolations; violations++) {
            int from = leastLengthCuts();
            for (int cuts = from; cuts <= Math.max(from, mostCuts); cuts++) {
                if (violations == mostViolations && cuts + shape.rakeEnds() >= fewerCuts
                        || violations > leastViolations && cuts > from) {
                    break;
                }
                Optional<Pattern> best = best(windows, violations, cuts);
                if (best.isPresent() && (violations < mostViolations || best.get().cuts() < fewerCuts)) {
                    return best;
                }
            }
        }
        return Optional.empty();
    }

    /**
     * Some patterns whose joints between pieces meet no window, those with the fewest cuts that have any; windows at the
     * ends of the run count up to {@code mostAtEnds}.
     */
    List<Pattern> variants(Windows windows, int mostAtEnds, int mostCuts, int most) {
        List<Pattern> variants = new ArrayList<>();
        int from = leastLengthCuts();
        for (int cuts = from; cuts <= Math.max(from, mostCuts) && variants.isEmpty(); cuts++) {
            for (PieceSet set : sets(cuts)) {
                if (variants.size() < most) {
                    new Sequencer(shape, masonry, set, windows).clear(mostAtEnds).ifPresent(variants::add);
                }
            }
        }
        return variants;
    }

    /** Level runs: the first set that can be ordered is the preferred one. Under a rake the order decides over cuts. */
    private Optional<Pattern> best(Windows windows, int violations, int cuts) {
        Pattern best = null;
        for (PieceSet set : sets(cuts)) {
            Optional<Pattern> found = new Sequencer(shape, masonry, set, windows).sequence(violations);
            if (found.isPresent() && (best == null || found.get().cost() < best.cost())) {
                best = found.get();
            }
            if (best != null && !shape.isRaked()) {
                break;
            }
        }
        return Optional.ofNullable(best);
    }
}
