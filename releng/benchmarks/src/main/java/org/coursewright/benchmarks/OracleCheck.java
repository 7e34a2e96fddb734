package org.coursewright.benchmarks;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.coursewright.benchmarks.oracle.Exhaustive;
import org.coursewright.benchmarks.oracle.GeneralModel;
import org.coursewright.benchmarks.oracle.Handing;
import org.coursewright.benchmarks.oracle.LayoutVerifier;
import org.coursewright.benchmarks.oracle.ModelAnswer;
import org.coursewright.benchmarks.oracle.Score;
import org.coursewright.benchmarks.walls.CoarseCuts;
import org.coursewright.benchmarks.walls.SmallWalls;
import org.coursewright.bond.BondRequest;
import org.coursewright.bond.BondResult;
import org.coursewright.bond.Effort;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;

/**
 * Checks the oracles against each other: the constraint model against trying everything, the engine against both, and
 * the verifier against layouts spoiled on purpose.
 *
 * <p>Arguments: number of buildings, seed. Exit status 1 if they differ or a spoiled layout goes unnoticed.
 */
public final class OracleCheck {

    private static final PrintStream OUT = System.out;
    private static final int MOST_WAYS = 1500;
    private static final double SECONDS = 10;

    private int compared;
    private int skipped;
    private int proven;
    private int worse;
    private int spoiled;
    private final List<String> failures = new ArrayList<>();

    private OracleCheck() {
    }

    public static void main(String[] arguments) {
        OracleCheck check = new OracleCheck();
        for (int index = 0; index < Integer.parseInt(arguments[0]); index++) {
            String name = "CoarseCuts.of(SmallWalls.of(%s, %d))".formatted(arguments[1], index);
            check.building(name, CoarseCuts.of(SmallWalls.of(Long.parseLong(arguments[1]), index)));
        }
        check.failures.forEach(OUT::println);
        OUT.printf("""
                Walls tried exhaustively: %d (left out as too large: %d)
                ... the constraint model proves as much: %d
                ... the engine lays them worse: %d
                Layouts spoiled on purpose: %d
                Failures: %d
                """, check.compared, check.skipped, check.proven, check.worse, check.spoiled, check.failures.size());
        if (!check.failures.isEmpty()) {
            System.exit(1);
        }
    }

    private void building(String name, BondRequest request) {
        BondResult engine = Engine.lay(request);
        Handing handing = Handing.of(request.meetings(), engine.throughOnOdd());
        List<WallLayout> modelled = new ArrayList<>();
        for (int index = 0; index < request.walls().size(); index++) {
            WallFace wall = request.walls().get(index);
            Optional<Score> best = Exhaustive.best(wall, handing, MOST_WAYS);
            if (best.isEmpty()) {
                skipped++;
            } else {
                compare(name, wall, handing, best.get(), engine.walls().get(index)).ifPresent(modelled::add);
            }
        }
        if (modelled.size() == request.walls().size()) {
            spoil(name, request, new BondResult(modelled, handing.throughOnOdd(), false, 0, Effort.FULL));
        }
    }

    private Optional<WallLayout> compare(String name, WallFace wall, Handing handing, Score best, WallLayout engine) {
        compared++;
        ModelAnswer answer = GeneralModel.lay(wall, handing, SECONDS);
        Score laid = Score.of(wall, handing, engine);
        if (answer.proven() && !answer.score().equals(Optional.of(best))) {
            failures.add("%s %s: trying everything gives %s, the model %s.".formatted(name, wall.mark(), best,
                    answer.score()));
        }
        if (laid.compareTo(best) < 0 || engine.optimal() && !best.equals(laid)) {
            failures.add(
                    "%s %s: the engine lays %s (called optimal: %s), %s is best.".formatted(name, wall.mark(), laid,
                            engine.optimal(), best));
        }
        if (laid.compareTo(best) > 0) {
            worse++;
            OUT.printf("%s %s: the engine lays %s, %s is best.%n", name, wall.mark(), laid, best);
        }
        proven += answer.proven() ? 1 : 0;
        return answer.layout().map(layout -> Recount.of(wall, handing, layout));
    }

    private void spoil(String name, BondRequest request, BondResult sound) {
        LayoutVerifier.faults(request, sound).forEach(fault -> failures.add(name + ": " + fault));
        for (Map.Entry<String, BondResult> bad : Spoiling.of(sound).entrySet()) {
            spoiled++;
            if (LayoutVerifier.faults(request, bad.getValue()).isEmpty()) {
                failures.add("%s: nobody notices %s.".formatted(name, bad.getKey()));
            }
        }
    }
}
