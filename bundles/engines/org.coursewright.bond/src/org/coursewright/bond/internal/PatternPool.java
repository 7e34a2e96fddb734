package org.coursewright.bond.internal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Patterns considered for all runs of one shape in one wall. It grows as patterns that fit neighbours are found. */
final class PatternPool {

    private static final int MOST_CUTS = 3;
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

    List<PieceSet> sets(int cuts) {
        return setsByCuts.computeIfAbsent(cuts, count -> {
            List<PieceSet> few = pieceSets.withCuts(count, ENOUGH_SPECIALS);
            return few.isEmpty() || count == 0 ? pieceSets.withCuts(count, Integer.MAX_VALUE) : few;
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
     * @param mostViolations patterns that meet more windows are not wanted
     * @param fewerCuts patterns with as many cuts are not wanted, if they meet {@code mostViolations} windows or more
     */
    Optional<Pattern> price(Windows windows, int mostViolations, int fewerCuts) {
        for (int violations = 0; violations <= mostViolations; violations++) {
            int from = leastLengthCuts();
            for (int cuts = from; cuts <= Math.max(from, MOST_CUTS); cuts++) {
                if (violations == mostViolations && cuts + shape.rakeEnds() >= fewerCuts
                        || violations > 0 && cuts > from) {
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

    private Optional<Pattern> best(Windows windows, int violations, int cuts) {
        Pattern best = null;
        for (PieceSet set : sets(cuts)) {
            Optional<Pattern> found = new Sequencer(shape, masonry, set, windows).sequence(violations);
            if (found.isPresent() && (best == null || found.get().cost() < best.cost())) {
                best = found.get();
            }
        }
        return Optional.ofNullable(best);
    }
}
