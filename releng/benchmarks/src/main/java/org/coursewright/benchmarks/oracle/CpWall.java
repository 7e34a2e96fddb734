package org.coursewright.benchmarks.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.coursewright.bond.WallFace;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;

/** The constraint model of one wall: its runs, the laps between them, and the objective. */
final class CpWall {

    private final CpModel model = new CpModel();
    private final List<CpRun> runs = new ArrayList<>();
    private final CpLaps laps;
    private long priceOfViolation = 1;

    /** @param options for every stretch the piece counts to choose from */
    CpWall(WallFace wall, Map<Stretch, List<Integer>> options) {
        CpScale scale = CpScale.of(wall, options.keySet());
        options.forEach((stretch, counts) -> runs.add(new CpRun(model, scale, stretch, counts)));
        laps = new CpLaps(model, scale.inGrid(wall.rule().leastLap().units()));
        for (CpRun lower : runs) {
            runs.stream().filter(upper -> upper.stretch().course() == lower.stretch().course() + 1)
                    .forEach(upper -> laps.keep(lower, upper));
        }
        minimise();
    }

    private LinearExpr cost() {
        LinearExprBuilder cost = LinearExpr.newBuilder();
        runs.forEach(run -> run.cuts().forEach(cut -> cost.addTerm(cut, 1)));
        laps.violations().forEach(violation -> cost.addTerm(violation, priceOfViolation));
        return cost.build();
    }

    /** One violation costs more than all pieces cut. */
    private void minimise() {
        runs.forEach(run -> priceOfViolation += run.mostPieces());
        model.minimize(cost());
    }

    /** Whether anything costs less than so many violations and cuts. */
    Verdict beat(int violations, int cuts, double seconds) {
        model.clearObjective();
        model.addLessOrEqual(cost(), violations * priceOfViolation + cuts - 1);
        CpSolver solver = solver(seconds);
        return switch (solver.solve(model)) {
            case OPTIMAL, FEASIBLE -> Verdict.REFUTED;
            case INFEASIBLE -> Verdict.CONFIRMED;
            default -> Verdict.UNDECIDED;
        };
    }

    /** @param seconds most time to take, in the solver's own seconds; @param hint where to begin */
    CpAnswer solve(double seconds, Optional<CpAnswer> hint) {
        hint.flatMap(CpAnswer::runs).ifPresent(this::hint);
        CpSolver solver = solver(seconds);
        CpSolverStatus status = solver.solve(model);
        boolean proven = status == CpSolverStatus.OPTIMAL;
        if (!proven && status != CpSolverStatus.FEASIBLE) {
            return new CpAnswer(Optional.empty(), 0, 0, false, status == CpSolverStatus.UNKNOWN, 0, 0);
        }
        int violations = count(solver, laps.violations());
        int cuts = runs.stream().mapToInt(run -> count(solver, run.cuts())).sum();
        List<LaidStretch> laid = runs.stream().map(run -> run.laid(solver)).toList();
        long bound = (long) Math.ceil(solver.bestObjectiveBound() - 1e-6);
        return new CpAnswer(Optional.of(laid), violations, cuts, proven, !proven, (int) (bound / priceOfViolation),
                (int) (bound % priceOfViolation));
    }

    /** The solver counts its steps, so that it gets equally far however busy the machine is. */
    private static CpSolver solver(double seconds) {
        CpSolver solver = new CpSolver();
        solver.getParameters().setMaxDeterministicTime(seconds).setNumWorkers(1).setRandomSeed(1);
        return solver;
    }

    private void hint(List<LaidStretch> laid) {
        for (int index = 0; index < runs.size(); index++) {
            runs.get(index).hint(model, laid.get(index).pieces());
        }
    }

    private static int count(CpSolver solver, List<BoolVar> literals) {
        return (int) literals.stream().filter(solver::booleanValue).count();
    }
}
