package org.coursewright.bond.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Patterns considered for all runs of one shape in one wall. It grows as patterns that fit neighbours are found. */
final class PatternPool {

    /** Cuts beyond the least that are tried where fewer do not fit the neighbours. */
    static final int EXTRA_CUTS = 3;
    private static final int ENOUGH_SPECIALS = 2;
    /** No more gauges than these are all looked at when a run is priced. */
    private static final int FEW_GAUGES = 300;

    private final RunShape shape;
    private final Masonry masonry;
    private final PieceSets pieceSets;
    private final int leastCuts;
    private final RunFiller filler;
    private final List<Pattern> patterns = new ArrayList<>();
    private final Map<Pattern, Integer> places = new HashMap<>();
    private final Map<Integer, List<PieceSet>> setsByCuts = new HashMap<>();

    /** @param leastCuts what {@link PieceSets#leastCuts} gave for the shape */
    PatternPool(RunShape shape, Masonry masonry, Shortfalls shortfalls, Effort effort, int leastCuts) {
        this.shape = shape;
        this.masonry = masonry;
        this.leastCuts = leastCuts;
        filler = new RunFiller(shape, shortfalls, effort);
        pieceSets = new PieceSets(shape, masonry);
        new SeedPatterns(shape, masonry).of(this).forEach(this::add);
        if (patterns.isEmpty()) {
            filler.best(new Windows(), true, new FillTable.Score(0, leastCuts), 0, leastCuts).ifPresent(this::add);
        }
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

    /** @return whether the pattern keeps the pins and is new */
    boolean add(Pattern pattern) {
        if (!shape.pins().areKept(shape, pattern)) {
            return false;
        }
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

    /**
     * The pattern that meets the fewest windows and has, among these, the fewest cuts, then the best preference.
     *
     * @param leastViolations windows that every pattern meets
     * @param mostViolations patterns that meet more windows are not wanted
     * @param extraCuts cuts beyond the least that are tried
     * @param fewerCuts patterns with as many cuts are not wanted, if they meet {@code mostViolations} windows or more
     */
    Optional<Pattern> price(Windows windows, int leastViolations, int mostViolations, int fewerCuts, int extraCuts) {
        for (int violations = leastViolations; violations <= mostViolations; violations++) {
            for (int cuts = leastCuts; cuts <= leastCuts + extraCuts; cuts++) {
                if (violations == mostViolations && cuts >= fewerCuts
                        || violations > leastViolations && cuts > leastCuts) {
                    break;
                }
                Optional<Pattern> found = filler.best(windows, filler.isSearchable(cuts, FEW_GAUGES),
                        new FillTable.Score(violations, cuts), violations, cuts);
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }

    /** The fewest windows that joints between pieces meet, whatever the cuts, as far as is proven. */
    int leastMet(Windows windows) {
        return filler.leastMet(windows);
    }

    /** Some patterns with so many cuts. */
    List<Pattern> some(int cuts, int perGauge, int most) {
        return filler.some(cuts, perGauge, most);
    }

    /** All patterns with so many cuts; empty if there are more than {@code most}. */
    Optional<List<Pattern>> all(int cuts, int most) {
        return filler.all(cuts, most);
    }

    /**
     * The fewest cuts, beyond the least of the shape, of all patterns that meet no more windows than {@code mostMet}; proven.
     *
     * @return {@code enough} if it takes so many or more
     */
    int extraCuts(Windows windows, int mostMet, int enough) {
        if (!filler.isComplete()) {
            return 0;
        }
        for (int extra = 0; extra < enough; extra++) {
            FillTable.Score least = new FillTable.Score(0, leastCuts + extra);
            Optional<Pattern> found = filler.best(windows, false, least, mostMet, leastCuts + extra)
                    .or(() -> filler.mayFill(windows, mostMet, least.cuts())
                            ? filler.best(windows, true, least, mostMet, least.cuts())
                            : Optional.empty());
            if (found.isPresent()) {
                add(found.get());
                return extra;
            }
        }
        return filler.isComplete() ? enough : 0;
    }

    /**
     * Some patterns whose joints between pieces meet no window, those with the fewest cuts that have any; windows at the
     * ends of the run count up to {@code mostAtEnds}.
     */
    List<Pattern> variants(Windows windows, int mostAtEnds, int extraCuts, int most) {
        return filler.variants(windows, mostAtEnds, leastCuts + extraCuts, most);
    }
}
