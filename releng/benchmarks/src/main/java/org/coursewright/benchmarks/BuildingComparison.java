package org.coursewright.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.coursewright.benchmarks.oracle.GeneralModel;
import org.coursewright.benchmarks.oracle.Handing;
import org.coursewright.benchmarks.oracle.LayoutVerifier;
import org.coursewright.benchmarks.oracle.ModelAnswer;
import org.coursewright.benchmarks.oracle.Score;
import org.coursewright.bond.BondRequest;
import org.coursewright.bond.BondResult;
import org.coursewright.bond.WallFace;

/**
 * One building laid by the engine and by a reference solver.
 *
 * @param name says how to draw it again
 * @param walls its walls, one by one
 * @param engineSeconds processor time the engine took (s)
 * @param faults what the verifier finds wrong in the engine's layout
 * @param others what the reference solver found with other handings
 */
record BuildingComparison(String name, List<WallComparison> walls, double engineSeconds, List<String> faults,
        OtherHandings others) {

    private static final int TRIES = 10;

    /**
     * Lays a building twice.
     *
     * @param limit most time for the reference solver on a wall (s)
     */
    static BuildingComparison of(String name, BondRequest request, double limit) {
        BuildingComparison compared = laidAsHanded(name, request, limit);
        Handing chosen = compared.walls().get(0).handing();
        return new BuildingComparison(name, compared.walls(), compared.engineSeconds(), compared.faults(),
                OtherHandings.of(request, chosen, compared.walls(), limit));
    }

    /** Lays a building twice, with its corners handed as the engine hands them; no other handing is tried. */
    static BuildingComparison laidAsHanded(String name, BondRequest request, double limit) {
        Engine.Timed timed = Engine.timed(request, TRIES);
        BondResult result = timed.result();
        List<String> faults = LayoutVerifier.faults(request, result);
        Handing chosen = Handing.of(request.meetings(), result.throughOnOdd());
        List<WallComparison> walls = new ArrayList<>();
        for (int index = 0; index < request.walls().size(); index++) {
            WallFace wall = request.walls().get(index);
            walls.add(WallComparison.of(wall, chosen, result.walls().get(index),
                    GeneralModel.lay(wall, chosen, limit)));
        }
        return new BuildingComparison(name, walls, timed.seconds(), faults, OtherHandings.UNTRIED);
    }

    /** @return what is wrong with the engine's layout or not as good as it could be, a line each */
    List<String> findings() {
        List<String> findings = new ArrayList<>();
        faults.stream().limit(2).forEach(fault -> findings.add("%s FAULT %s".formatted(name, fault)));
        for (WallComparison wall : walls) {
            wall.refutation().ifPresent(claim -> findings.add("%s REFUTED %s".formatted(name, claim)));
            if (wall.order() > 0) {
                findings.add("%s WORSE %s laid with %s, but %s exists.".formatted(name, wall.wall().mark(),
                        wall.score(), wall.reference().score().orElseThrow()));
            }
        }
        if (isHandingWorse()) {
            findings.add("%s HANDING %s in all, but %s exists with other handing.".formatted(name, engineScore(),
                    others.best().orElseThrow()));
        }
        return findings;
    }

    /** Whether every wall is laid as well as it can be and another handing would still be better. */
    boolean isHandingWorse() {
        return walls.stream().allMatch(wall -> wall.order() <= 0) && others.best().isPresent()
                && others.best().get().compareTo(engineScore()) < 0;
    }

    Score engineScore() {
        return walls.stream().map(WallComparison::score).reduce(Score.NONE, Score::plus);
    }

    /**
     * @return time of the reference solver, for all handings that were tried, over the engine's, or empty if their layouts
     *         are not equal and proven
     */
    Optional<Double> ratio() {
        boolean handed = others == OtherHandings.UNTRIED || others.best().isPresent();
        return handed && walls.stream().allMatch(wall -> wall.reference().proven() && wall.order() == 0)
                ? Optional.of(timesFaster())
                : Optional.empty();
    }

    /**
     * @return the same, also where only the engine proves what it laid: the solver has used up its time then without
     *         coming to an end, so it takes more times as long than that
     */
    Optional<Double> leastRatio() {
        return walls.stream().allMatch(wall -> wall.reference().proven() ? wall.order() == 0 : wall.isSettledFirst())
                ? Optional.of(timesFaster())
                : Optional.empty();
    }

    private double timesFaster() {
        double asChosen = walls.stream().mapToDouble(wall -> wall.reference().seconds()).sum();
        return (asChosen + others.seconds()) / engineSeconds;
    }
}
