package org.coursewright.benchmarks.oracle;

import java.lang.management.ManagementFactory;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

import org.coursewright.bond.NearestLengths;
import org.coursewright.bond.UnfillableReason;
import org.coursewright.bond.UnfillableRun;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;

import com.google.ortools.Loader;

/**
 * Lays one wall with a general-purpose constraint solver (CP-SAT), its corners handed as given.
 *
 * <p>The model is the definition itself: every piece is a variable, so is the number of pieces of every run; laps are
 * compared exactly by cross-multiplication. It is solved first with the piece counts that need fewest cuts and one cut
 * more, then with every count that could still be better, so that what it calls proven is.
 */
public final class GeneralModel {

    static {
        Loader.loadNativeLibraries();
    }

    private static final long MOST_PAIRS = 300_000;

    private final WallFace wall;
    private final Handing handing;
    private final List<Stretch> fillable;
    private final List<UnfillableRun> unfillable;
    private final List<TreeMap<Integer, Integer>> leastCuts;
    private final int forced;
    private final int straight;
    private final double limit;
    private final long startedOnProcessor = processorTime();

    private GeneralModel(WallFace wall, Handing handing, double limit) {
        LeastCuts least = new LeastCuts(wall);
        List<Stretch> stretches = Stretches.of(wall, handing);
        this.wall = wall;
        this.handing = handing;
        this.limit = limit;
        this.fillable = stretches.stream().filter(stretch -> least.fewest(stretch).isPresent()).toList();
        this.unfillable = stretches.stream().filter(stretch -> least.fewest(stretch).isEmpty()).map(this::unfilled)
                .toList();
        this.forced = ForcedViolations.count(fillable, wall.rule());
        this.straight = StraightJoints.count(fillable);
        this.leastCuts = fillable.stream().map(least::byPieces).toList();
    }

    private UnfillableRun unfilled(Stretch stretch) {
        return new UnfillableRun(wall.courses().get(stretch.course()).number(), LaidStretch.length(stretch.from()),
                LaidStretch.length(stretch.to()), stretch.start(), stretch.end(),
                new UnfillableReason.NothingAddsUp(wall.rule().least(), wall.rule().most()),
                new NearestLengths(Optional.empty(), Optional.empty()));
    }

    /**
     * Lays a wall.
     *
     * @param limit most time for each of at most two searches, in the solver's deterministic seconds, which are
     *        about as long as a second of an idle core
     * @return the best layout found and how far it is proven
     */
    public static ModelAnswer lay(WallFace wall, Handing handing, double limit) {
        return new GeneralModel(wall, handing, limit).lay();
    }

    /**
     * Looks for a better layout of a wall than the one known, and for nothing else.
     *
     * @param known score of a layout of the wall
     * @param limit most time for each of at most two searches, in the solver's deterministic seconds, which are
     *        about as long as a second of an idle core
     * @return whether there is a better one; undecided also if the model would grow too large
     */
    public static Verdict beat(WallFace wall, Handing handing, Score known, double limit) {
        return new GeneralModel(wall, handing, limit).beat(known);
    }

    private Verdict beat(Score known) {
        if (known.unfillable() > unfillable.size()) {
            return Verdict.REFUTED;
        }
        int violations = known.lapViolations() + straight;
        CpAnswer answer = new CpAnswer(Optional.of(List.of()), violations, known.cuts(), false, false, 0, 0);
        int slack = answer.slackToProve(forced, leastCutsOfAll());
        if (slack < 0) {
            return Verdict.CONFIRMED;
        }
        Map<Stretch, List<Integer>> options = options(slack);
        return pairsOfJoints(options) > MOST_PAIRS
                ? Verdict.UNDECIDED
                : new CpWall(wall, options).beat(violations, known.cuts(), limit);
    }

    /** How large a model is: pairs of joints in consecutive courses that may have to lap. */
    private static long pairsOfJoints(Map<Stretch, List<Integer>> options) {
        TreeMap<Integer, Long> joints = new TreeMap<>();
        options.forEach((stretch, counts) -> joints.merge(stretch.course(),
                counts.stream().mapToLong(stretch::joints).sum(), Long::sum));
        return joints.keySet().stream().mapToLong(course -> joints.get(course) * joints.getOrDefault(course + 1, 0L))
                .sum();
    }

    private ModelAnswer lay() {
        CpAnswer first = new CpWall(wall, options(1)).solve(limit, Optional.empty());
        int slack = first.slackToProve(forced, leastCutsOfAll());
        if (slack <= 1) {
            return answer(first, first.isProven(), bound(first));
        }
        if (first.isOutOfTime()) {
            return answer(first, false, weakBound());
        }
        CpAnswer second = new CpWall(wall, options(slack)).solve(limit, Optional.of(first));
        CpAnswer best = second.isBetterThan(first) ? second : first;
        return answer(best, second.isProven(), bound(second));
    }

    /** Every stretch with the piece counts that need at most {@code slack} cuts more than its best. */
    private Map<Stretch, List<Integer>> options(int slack) {
        Map<Stretch, List<Integer>> options = new LinkedHashMap<>();
        for (int index = 0; index < fillable.size(); index++) {
            TreeMap<Integer, Integer> cuts = leastCuts.get(index);
            int fewest = fewest(cuts);
            options.put(fillable.get(index),
                    cuts.keySet().stream().filter(pieces -> cuts.get(pieces) - fewest <= slack).toList());
        }
        return options;
    }

    private static int fewest(TreeMap<Integer, Integer> cuts) {
        return cuts.values().stream().mapToInt(Integer::intValue).min().orElseThrow();
    }

    private int leastCutsOfAll() {
        return leastCuts.stream().mapToInt(GeneralModel::fewest).sum();
    }

    private Score weakBound() {
        return new Score(unfillable.size(), forced - straight, leastCutsOfAll());
    }

    /** What a model says that holds every layout better than the best one known. */
    private Score bound(CpAnswer complete) {
        Score said = new Score(unfillable.size(), complete.leastViolations() - straight, complete.leastCuts());
        return said.compareTo(weakBound()) > 0 ? said : weakBound();
    }

    /** The solver has one worker, which is the calling thread. */
    private static long processorTime() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private ModelAnswer answer(CpAnswer best, boolean proven, Score bound) {
        Optional<WallLayout> layout = best.runs().map(runs -> LaidStretch.layout(wall, runs, unfillable));
        Optional<Score> score = layout.map(laid -> Score.of(wall, handing, laid));
        boolean isProven = proven && score.isPresent();
        return new ModelAnswer(layout, score, isProven, isProven ? score.get() : bound,
                (processorTime() - startedOnProcessor) / 1e9);
    }
}
