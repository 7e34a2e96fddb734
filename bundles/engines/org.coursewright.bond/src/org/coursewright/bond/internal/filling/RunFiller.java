package org.coursewright.bond.internal.filling;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

import org.coursewright.bond.Piece;
import org.coursewright.bond.internal.choice.WorkLimit;
import org.coursewright.bond.internal.lap.Windows;
import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.Pattern;
import org.coursewright.bond.internal.run.RunShape;

/** Fills runs of one shape with the fewest windows met and cuts made; every order of pieces is looked at. */
public final class RunFiller {

    /** Runs no longer than so many units are short. */
    private static final int SHORT = 3;
    private static final int MOST_CUTS = 20;
    private static final int MOST_MET = 4;

    private final RunShape shape;
    private final Masonry masonry;
    private final Shortfalls shortfalls;
    private final Gauges gauges;
    private final FillTable table;
    private final WorkLimit workLimit;
    private final Map<Integer, Integer> gaugesByCuts = new HashMap<>();
    private Optional<FillSearch> search = Optional.empty();

    /** @param workLimit what filling is taken from; nothing more is found once it is spent */
    public RunFiller(RunShape shape, Shortfalls shortfalls, WorkLimit workLimit) {
        this.workLimit = workLimit;
        this.shape = shape;
        masonry = shortfalls.masonry();
        this.shortfalls = shortfalls;
        gauges = new Gauges(shape, masonry, shortfalls);
        table = new FillTable(shape, masonry, shortfalls, workLimit);
    }

    /**
     * The filling that meets the fewest windows and has, among these, the fewest cuts; joints near the nominal where the
     * choice is free.
     *
     * @param exact whether every gauge is looked at, or a selection spread over all of them
     * @param least a score that nothing can better, to stop at
     * @param mostViolations fillings that meet more windows are not wanted
     * @param mostCuts fillings with more cuts are not wanted
     * @return empty if there is none
     */
    public Optional<Pattern> best(Windows windows, boolean exact, FillTable.Score least, int mostViolations,
            int mostCuts) {
        Pattern best = null;
        FillTable.Score found = FillTable.UNFILLED;
        for (Gauge gauge : exact && isComplete() ? gauges.all() : gauges.some()) {
            int met = Math.min(mostViolations, found.violations());
            int cuts = found.violations() <= least.violations() ? found.cuts() - 1 : mostCuts;
            Windows.Grid grid = windows.grid(gauge.joints());
            if (workLimit.isSpent() || shortfalls.leastCuts(gauge) > cuts || table.atEnds(gauge, grid) > met) {
                continue;
            }
            FillTable.Score score = table.fill(gauge, grid, met, cuts);
            if (isBetter(score, found)) {
                found = score;
                best = pattern(score);
                if (!isBetter(least, found)) {
                    break;
                }
            }
        }
        return Optional.ofNullable(best).or(() -> single(mostCuts));
    }

    /**
     * A filling that meets no more windows and has no more cuts than that; every gauge is looked at, many of them at once.
     *
     * @return empty if there is none, which is proven while this {@link #isComplete()}
     */
    public Optional<Pattern> any(Windows windows, int mostViolations, int mostCuts) {
        if (shape.isRaked() || !shape.pins().isEmpty()) {
            return best(windows, true, new FillTable.Score(mostViolations, mostCuts), mostViolations, mostCuts);
        }
        if (search.isEmpty()) {
            search = Optional.of(new FillSearch(shape, shortfalls, gauges, workLimit));
        }
        return search.get().any(windows, mostViolations, mostCuts);
    }

    /** The same with some gauges only. */
    public Optional<Pattern> any(List<Gauge> group, Windows windows, int mostViolations, int mostCuts) {
        for (Gauge gauge : workLimit.isSpent() ? List.<Gauge>of() : group) {
            FillTable.Score score = table.fill(gauge, windows.grid(gauge.joints()), mostViolations, mostCuts);
            if (score != FillTable.UNFILLED) {
                return Optional.of(pattern(score));
            }
        }
        return Optional.empty();
    }

    /** The fewest cuts with which a raked run can be filled at all; empty if nothing fills it. */
    OptionalInt leastCuts() {
        int most = (int) (shape.length() / Math.max(1, Math.min(masonry.cutLeast(), masonry.whole()))) + 1;
        FillTable.Score least = new FillTable.Score(0, 0);
        for (int cuts = 1; cuts < 2 * most; cuts *= 2) {
            Optional<Pattern> found = best(new Windows(), true, least, 0, cuts);
            if (found.isPresent()) {
                return OptionalInt.of(isComplete() ? found.get().cuts() : 1);
            }
        }
        return OptionalInt.empty();
    }

    /**
     * The fewest windows that joints between pieces meet, whatever the number of cuts; proven, and for runs of few pieces
     * exact.
     *
     * @param windows on whole positions from the start of the run
     */
    public int leastMet(Windows windows) {
        return Math.max(new Bridges(shape, masonry).leastMet(windows.grid(1)), leastMetSearched(windows));
    }

    private int leastMetSearched(Windows windows) {
        int cuts = (int) (shape.length() / Math.max(1, masonry.cutLeast())) + 1;
        int least = shape.length() > SHORT * masonry.whole() || cuts > MOST_CUTS || !isComplete() ? 0 : MOST_MET;
        for (Gauge gauge : least == 0 ? List.<Gauge>of() : gauges.all()) {
            if (least > 0) {
                least = Math.min(least,
                        table.fill(gauge, windows.grid(gauge.joints()), least - 1, cuts, false).violations());
            }
        }
        return least == MOST_MET || !isComplete() ? 0 : least;
    }

    /** Whether every filling with so many cuts can be looked at, with no more gauges than {@code most}. */
    public boolean isSearchable(int cuts, int most) {
        long joints = shape.length() / Math.max(1, Math.min(masonry.cutLeast(), masonry.whole())) + 2;
        boolean few = (masonry.most() - masonry.least()) * joints / shortfalls.step() <= most;
        return isComplete() && few && gaugesByCuts.computeIfAbsent(cuts, count -> (int) gauges.all().stream()
                .filter(gauge -> shortfalls.leastCuts(gauge) <= count).count()) <= most;
    }

    /** Whether nothing is left out when every gauge is looked at. */
    public boolean isComplete() {
        return shortfalls.isComplete() && !workLimit.isSpent();
    }

    /** Some fillings with the fewest cuts whose joints between pieces meet no window. */
    public List<Pattern> variants(Windows windows, int mostAtEnds, int mostCuts, int most) {
        List<Pattern> variants = new ArrayList<>();
        int limit = mostCuts;
        for (Gauge gauge : gauges.some()) {
            if (workLimit.isSpent() || variants.size() == most) {
                break;
            }
            Windows.Grid grid = windows.grid(gauge.joints());
            int atEnds = table.atEnds(gauge, grid);
            if (atEnds <= mostAtEnds && shortfalls.leastCuts(gauge) <= limit) {
                FillTable.Score score = table.fill(gauge, grid, atEnds, limit);
                if (score.cuts() <= limit) {
                    if (score.cuts() < limit) {
                        variants.clear();
                        limit = score.cuts();
                    }
                    variants.add(pattern(score));
                }
            }
        }
        return variants;
    }

    private Pattern pattern(FillTable.Score score) {
        List<Pattern> patterns = new ArrayList<>();
        new FillTrace(table, shape, masonry, 1, patterns).gather(score);
        return patterns.get(0);
    }

    /** Fillings with so many cuts, no more than {@code perGauge} of one gauge. */
    public List<Pattern> some(int cuts, int perGauge, int most) {
        List<Pattern> patterns = new ArrayList<>();
        for (Gauge gauge : gauges.some()) {
            if (shortfalls.leastCuts(gauge) <= cuts && patterns.size() < most) {
                gather(gauge, cuts, Math.min(most, patterns.size() + perGauge), patterns);
            }
        }
        return patterns;
    }

    private void gather(Gauge gauge, int cuts, int most, List<Pattern> patterns) {
        if (table.fill(gauge, new Windows().grid(gauge.joints()), 0, cuts) != FillTable.UNFILLED
                && table.isReached(gauge.pieces(), 0, cuts, gauge.shortfall())) {
            new FillTrace(table, shape, masonry, most, patterns).gather(new FillTable.Score(0, cuts));
        }
    }

    /**
     * All fillings with so many cuts.
     *
     * @return empty if there are more than {@code most}
     */
    public Optional<List<Pattern>> all(int cuts, int most) {
        List<Pattern> patterns = new ArrayList<>();
        for (Gauge gauge : isComplete() ? gauges.all() : List.<Gauge>of()) {
            if (shortfalls.leastCuts(gauge) <= cuts && patterns.size() <= most) {
                gather(gauge, cuts, most + 1, patterns);
            }
        }
        if (patterns.isEmpty() && cuts == 1) {
            single(cuts).ifPresent(patterns::add);
        }
        return patterns.size() > most || !isComplete() ? Optional.empty() : Optional.of(patterns);
    }

    private static boolean isBetter(FillTable.Score one, FillTable.Score other) {
        return one.violations() < other.violations()
                || one.violations() == other.violations() && one.cuts() < other.cuts();
    }

    /** A piece alone under a rake is cut to whatever length is there: it has no joint to make up for the cut step. */
    private Optional<Pattern> single(int mostCuts) {
        boolean fits = shape.isRaked() && shape.startJoints() + shape.endJoints() == 0 && mostCuts > 0
                && shape.length() >= masonry.shortest() && shape.length() <= masonry.whole();
        return fits
                ? Optional.of(new Pattern(shape, masonry, new long[]{shape.length()},
                        new Piece.Kind[]{Piece.Kind.CUT}, 0)).filter(pattern -> shape.pins().areKept(shape, pattern))
                : Optional.empty();
    }
}
