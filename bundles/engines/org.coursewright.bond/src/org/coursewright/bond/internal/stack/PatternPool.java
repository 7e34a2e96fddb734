package org.coursewright.bond.internal.stack;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toList;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

import org.coursewright.bond.internal.filling.FillTable;
import org.coursewright.bond.internal.filling.Gauge;
import org.coursewright.bond.internal.filling.RunFiller;
import org.coursewright.bond.internal.lap.Windows;
import org.coursewright.bond.internal.pieces.PieceOrders;
import org.coursewright.bond.internal.pieces.PieceSets;
import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.Pattern;
import org.coursewright.bond.internal.run.PieceSet;
import org.coursewright.bond.internal.run.Preference;
import org.coursewright.bond.internal.run.RunShape;

/** Patterns considered for all runs of one shape in one wall. It grows as patterns that fit neighbours are found. */
public final class PatternPool {

    /** Cuts beyond the least that are tried where fewer do not fit the neighbours. */
    public static final int EXTRA_CUTS = 3;
    private static final int ENOUGH_SPECIALS = 2;
    /** No more gauges than these are all looked at when a run is priced. */
    private static final int FEW_GAUGES = 300;
    /** Of most shapes no more lists of sets than these are looked into. */
    private static final int FEW_SETS = 2;
    /** So many orders are remembered: thousands would take much memory. */
    private static final int MOST_ORDERS = 600;

    private final RunShape shape;
    private final Masonry masonry;
    private final PieceSets pieceSets;
    private final int leastCuts;
    private final RunFiller filler;
    private final List<Pattern> patterns = new ArrayList<>();
    private final Map<Pattern, Integer> places = new HashMap<>();
    private final Map<Integer, List<PieceSet>> setsByCuts = new HashMap<>();
    private final Map<List<Integer>, Optional<List<PieceSet>>> allSets = new HashMap<>();
    private final Map<List<PieceSet>, List<Gauge>> gauges = new IdentityHashMap<>(FEW_SETS);
    private final Map<List<PieceSet>, List<List<PieceSet>>> alike = new IdentityHashMap<>(FEW_SETS);
    private final Map<List<PieceSet>, PieceOrders> orders = new IdentityHashMap<>(FEW_SETS);

    /**
     * @param filler fills runs of the shape
     * @param leastCuts what {@code LeastCuts} gave for the shape
     */
    PatternPool(RunShape shape, Masonry masonry, RunFiller filler, int leastCuts) {
        this.shape = shape;
        this.masonry = masonry;
        this.leastCuts = leastCuts;
        this.filler = filler;
        pieceSets = new PieceSets(shape, masonry);
    }

    /** Fills an empty pool with patterns to begin with, those with the fewest cuts. */
    void seed() {
        new SeedPatterns(shape, masonry).fewest(this).forEach(this::add);
        if (patterns.isEmpty()) {
            filler.best(new Windows(), true, new FillTable.Score(0, leastCuts), 0, leastCuts).ifPresent(this::add);
        }
    }

    /** Adds patterns with more cuts, which laps may need. */
    public void seedMore() {
        new SeedPatterns(shape, masonry).more(this).forEach(this::add);
    }

    /** The shape of the runs. */
    public RunShape shape() {
        return shape;
    }

    /** No pattern of this shape has fewer cuts; proven. */
    public int leastCuts() {
        return leastCuts;
    }

    /** The patterns in the order in which they were added. */
    public List<Pattern> patterns() {
        return patterns;
    }

    /** @return whether the pattern keeps the pins and is new */
    public boolean add(Pattern pattern) {
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
    public List<PieceSet> sets(int cuts) {
        return setsByCuts.computeIfAbsent(cuts, count -> {
            List<PieceSet> few = pieceSets.withCuts(count, ENOUGH_SPECIALS);
            return preferredFirst(few.isEmpty() || count == 0 ? pieceSets.withCuts(count, Integer.MAX_VALUE) : few);
        });
    }

    /** All sets with so many pieces cut to length, the preferred first; empty if there are too many. */
    public Optional<List<PieceSet>> allSets(int cuts, int most) {
        return allSets.computeIfAbsent(List.of(cuts, most),
                key -> PieceSets.all(shape, masonry, cuts, most).map(this::preferredFirst));
    }

    private List<PieceSet> preferredFirst(List<PieceSet> all) {
        record Ranked(PieceSet set, int preference) {
        }
        return all.stream().map(set -> new Ranked(set, Preference.of(masonry, set)))
                .sorted(Comparator.comparingInt(Ranked::preference)).map(Ranked::set).toList();
    }

    /**
     * Whether one of some sets may be put into an order that meets no more windows; a "no" is proven.
     *
     * @param sets all of them with so many cuts
     */
    public boolean mayFill(Windows windows, int mostMet, List<PieceSet> sets, int cuts) {
        return !filler.isComplete() || filler.any(gauges(sets), windows, mostMet, cuts).isPresent()
                || !filler.isComplete();
    }

    private List<Gauge> gauges(List<PieceSet> sets) {
        return gauges.computeIfAbsent(sets, each -> each.stream()
                .map(set -> new Gauge(set.pieces(), set.joints(), set.jointTotal(),
                        set.jointTotal() + set.pieces() * masonry.whole() - shape.length()))
                .distinct().toList());
    }

    /** Sets of one make-up together. */
    List<List<PieceSet>> alike(List<PieceSet> sets) {
        return alike.computeIfAbsent(sets, each -> List
                .copyOf(each.stream().collect(groupingBy(PieceSet::makeUp, LinkedHashMap::new, toList())).values()));
    }

    /** The orders of sets of this shape's pieces, all of one make-up. */
    public PieceOrders orders(List<PieceSet> sets) {
        if (orders.size() > MOST_ORDERS) {
            orders.clear();
        }
        return orders.computeIfAbsent(sets, each -> new PieceOrders(shape, masonry, each));
    }

    /**
     * The pattern that meets the fewest windows and has, among these, the fewest cuts, then the best preference.
     *
     * @param leastViolations windows that every pattern meets
     * @param mostViolations patterns that meet more windows are not wanted
     * @param extraCuts cuts beyond the least that are tried
     * @param fewerCuts patterns with as many cuts are not wanted, if they meet {@code mostViolations} windows or more
     */
    public Optional<Pattern> price(Windows windows, int leastViolations, int mostViolations, int fewerCuts,
            int extraCuts) {
        for (int violations = leastViolations; violations <= mostViolations; violations++) {
            for (int cuts = leastCuts; cuts <= leastCuts + extraCuts; cuts++) {
                if (violations == mostViolations && cuts >= fewerCuts
                        || violations > leastViolations && cuts > leastCuts) {
                    break;
                }
                Optional<Pattern> found = best(windows, violations, cuts);
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }

    /** A pattern with a joint near the nominal if one is found soon, else any. */
    private Optional<Pattern> best(Windows windows, int mostMet, int cuts) {
        return filler.best(windows, false, new FillTable.Score(0, cuts), mostMet, cuts)
                .or(() -> filler.isSearchable(cuts, FEW_GAUGES)
                        ? filler.any(windows, mostMet, cuts)
                        : Optional.empty());
    }

    /** The fewest windows that joints between pieces meet, whatever the cuts, as far as is proven. */
    int leastMet(Windows windows) {
        return filler.leastMet(windows);
    }

    /** Some patterns with so many cuts. */
    public List<Pattern> some(int cuts, int perGauge, int most) {
        return filler.some(cuts, perGauge, most);
    }

    /** All patterns with so many cuts; empty if there are more than {@code most}. */
    public Optional<List<Pattern>> all(int cuts, int most) {
        return filler.all(cuts, most);
    }

    /**
     * Whether a pattern with no more than so many cuts beyond the least meets no more windows; a "no" is proven.
     *
     * @param shown told one, if it is found; one with joints near the nominal if that is found soon, for it leaves room
     *        where dimensions change
     */
    public boolean mayFill(Windows windows, int mostMet, int extraCuts, Consumer<Pattern> shown) {
        int cuts = leastCuts + extraCuts;
        if (!filler.isComplete()) {
            return true;
        }
        Optional<Pattern> found = filler.best(windows, false, new FillTable.Score(0, cuts), mostMet, cuts)
                .or(() -> filler.any(windows, mostMet, cuts));
        found.ifPresent(shown);
        return found.isPresent() || !filler.isComplete();
    }

    /**
     * Some patterns whose joints between pieces meet no window, those with the fewest cuts that have any; windows at the
     * ends of the run count up to {@code mostAtEnds}.
     */
    public List<Pattern> variants(Windows windows, int mostAtEnds, int extraCuts, int most) {
        return filler.variants(windows, mostAtEnds, leastCuts + extraCuts, most);
    }
}
