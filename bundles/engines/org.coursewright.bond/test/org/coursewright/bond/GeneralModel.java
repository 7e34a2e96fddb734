package org.coursewright.bond;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solver;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.search.strategy.selectors.values.IntDomainMax;
import org.chocosolver.solver.search.strategy.selectors.variables.InputOrder;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;
import org.coursewright.measure.Length;

/**
 * The runs of a laid wall as a model for a general-purpose constraint solver, definition by definition: every piece is a
 * variable, so is the number of pieces of every run, and laps are compared by cross-multiplication. It shares nothing with
 * the engine but the runs' extents. Lengths are counted in eighths of an inch; walls are level.
 */
final class GeneralModel {

    private static final long EIGHTH = Length.ofInchFraction(1, 8).units();
    private static final long MOST_FAILS = 400;

    /** A run filled with a certain number of pieces. */
    private record Filling(BoolVar used, IntVar[] starts, IntVar jointTotal, int joints) {
    }

    private final Model model = new Model();
    private final WallFace wall;
    private final int mostCuts;
    private final List<IntVar> choices = new ArrayList<>();
    private final List<BoolVar> cuts = new ArrayList<>();
    private final List<BoolVar> shortLaps = new ArrayList<>();

    private GeneralModel(WallFace wall, int mostCuts) {
        this.wall = wall;
        this.mostCuts = mostCuts;
    }

    /**
     * Whether the runs of a layout can be filled with at most so many cuts and no lap short but those that are straight.
     *
     * @param layout a layout with no short lap, which tells the runs
     * @return empty if the solver gave up
     */
    static Optional<Boolean> canBeLaid(WallFace wall, WallLayout layout, int cuts) {
        return new GeneralModel(wall, cuts).solve(layout);
    }

    private Optional<Boolean> solve(WallLayout layout) {
        int slack = mostCuts - layout.courses().stream().flatMap(course -> course.runs().stream())
                .mapToInt(run -> new RunCounts(wall, run).fewestCuts()).sum();
        if (slack < 0) {
            return Optional.of(false);
        }
        List<List<List<Filling>>> courses = layout.courses().stream()
                .map(course -> course.runs().stream().map(run -> fillings(run, slack)).toList()).toList();
        for (int upper = 1; upper < courses.size(); upper++) {
            for (List<Filling> below : courses.get(upper - 1)) {
                courses.get(upper).forEach(above -> lap(below, above));
            }
        }
        atMost(shortLaps, layout.straightJoints());
        atMost(cuts, mostCuts);
        Solver solver = model.getSolver();
        solver.setSearch(Search.lastConflict(Search.intVarSearch(new InputOrder<>(model), new IntDomainMax(),
                choices.toArray(new IntVar[0]))));
        solver.limitFail(MOST_FAILS);
        boolean found = solver.solve();
        return solver.isStopCriterionMet() ? Optional.empty() : Optional.of(found);
    }

    private void atMost(List<BoolVar> counted, int limit) {
        if (!counted.isEmpty()) {
            model.sum(counted.toArray(new BoolVar[0]), "<=", limit).post();
        }
    }

    private static int eighths(Length length) {
        if (length.units() % EIGHTH != 0) {
            throw new IllegalArgumentException("%s is no multiple of 1/8 in.".formatted(length));
        }
        return Math.toIntExact(length.units() / EIGHTH);
    }

    private List<Filling> fillings(Run run, int slack) {
        List<Filling> fillings = new RunCounts(wall, run).within(slack).stream().map(count -> filling(run, count))
                .toList();
        model.sum(fillings.stream().map(Filling::used).toArray(BoolVar[]::new), "=", 1).post();
        return fillings;
    }

    private Filling filling(Run run, int count) {
        BoolVar used = model.boolVar();
        choices.add(used);
        IntVar[] pieces = IntStream.range(0, count).mapToObj(piece -> piece(used)).toArray(IntVar[]::new);
        int ends = (run.startsWith() == RunEnd.JOINT ? 1 : 0) + (run.endsWith() == RunEnd.JOINT ? 1 : 0);
        int joints = count - 1 + ends;
        int length = eighths(run.length());
        IntVar jointTotal = model.intVar(-count * eighths(wall.stock().whole()), length);
        IntVar[] parts = new IntVar[count + 1];
        System.arraycopy(pieces, 0, parts, 0, count);
        parts[count] = jointTotal;
        model.sum(parts, "=", length).post();
        model.arithm(jointTotal, ">=", joints * eighths(wall.rule().least())).impliedBy(used);
        model.arithm(jointTotal, "<=", joints * eighths(wall.rule().most())).impliedBy(used);
        return new Filling(used, starts(run, pieces, jointTotal, joints), jointTotal, joints);
    }

    /** A whole unit in fillings that are not used, so that they do not count. */
    private IntVar piece(BoolVar used) {
        PieceStock stock = wall.stock();
        int whole = eighths(stock.whole());
        int[] stocked = IntStream.concat(IntStream.of(whole), stock.specials().stream().mapToInt(GeneralModel::eighths))
                .toArray();
        int step = eighths(stock.cutStep());
        int[] cut = IntStream.range(1, whole).filter(length -> length % step == 0)
                .filter(length -> length >= eighths(stock.shortestPiece())).toArray();
        IntVar piece = model.intVar("piece", IntStream.concat(IntStream.of(stocked), IntStream.of(cut)).distinct()
                .sorted().toArray());
        model.arithm(piece, "=", whole).impliedBy(used.not());
        choices.add(piece);
        cuts.add(model.notMember(piece, stocked).reify());
        return piece;
    }

    /** Where joints begin, from the wall's start, times the number of joints. */
    private IntVar[] starts(Run run, IntVar[] pieces, IntVar jointTotal, int joints) {
        IntVar[] starts = new IntVar[joints];
        int first = run.startsWith() == RunEnd.JOINT ? 1 : 0;
        int reach = joints * (eighths(run.length()) + pieces.length * eighths(wall.stock().whole()));
        for (int joint = 0; joint < joints; joint++) {
            int before = joint + 1 - first;
            IntVar[] terms = new IntVar[before + 2];
            int[] times = new int[before + 2];
            System.arraycopy(pieces, 0, terms, 0, before);
            Arrays.fill(times, 0, before, joints);
            starts[joint] = model.intVar(eighths(run.from()) * joints - reach, eighths(run.from()) * joints + reach);
            terms[before] = jointTotal;
            times[before] = joint;
            terms[before + 1] = starts[joint];
            times[before + 1] = -1;
            model.scalar(terms, times, "=", -eighths(run.from()) * joints).post();
        }
        return starts;
    }

    private void lap(List<Filling> below, List<Filling> above) {
        for (Filling one : below) {
            for (Filling other : above) {
                for (IntVar start : one.starts) {
                    for (IntVar otherStart : other.starts) {
                        BoolVar shortLap = model.boolVar();
                        model.and(one.used, other.used, gapIsShort(one, start, other, otherStart),
                                gapIsShort(other, otherStart, one, start)).reifyWith(shortLap);
                        shortLaps.add(shortLap);
                    }
                }
            }
        }
    }

    /** Whether from the end of the first joint to the start of the second there is less than the least lap. */
    private BoolVar gapIsShort(Filling first, IntVar start, Filling second, IntVar secondStart) {
        int lap = eighths(wall.rule().leastLap());
        return model.scalar(new IntVar[]{secondStart, start, first.jointTotal},
                new int[]{first.joints, -second.joints, -second.joints}, "<", lap * first.joints * second.joints)
                .reify();
    }
}
