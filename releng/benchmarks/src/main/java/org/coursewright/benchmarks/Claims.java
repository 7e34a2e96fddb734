package org.coursewright.benchmarks;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;

import org.coursewright.benchmarks.oracle.GeneralModel;
import org.coursewright.benchmarks.oracle.Handing;
import org.coursewright.benchmarks.oracle.Score;
import org.coursewright.benchmarks.oracle.Verdict;
import org.coursewright.benchmarks.walls.RandomWalls;
import org.coursewright.bond.BondRequest;
import org.coursewright.bond.BondResult;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;

/**
 * Tries to refute what the engine calls optimal among full-sized random walls: the constraint solver looks for a better
 * layout of each, and for nothing else.
 *
 * <p>Arguments: number of walls, seed, most seconds for the solver on a wall, report file. Exit status 1 if a claim is
 * refuted.
 */
public final class Claims {

    private static final PrintStream OUT = System.out;

    private final double limit;
    private final Map<Verdict, Integer> verdicts = new EnumMap<>(Verdict.class);

    private Claims(double limit) {
        this.limit = limit;
    }

    public static void main(String[] arguments) throws IOException {
        int count = Integer.parseInt(arguments[0]);
        BondRequest request = RandomWalls.of(Long.parseLong(arguments[1]), count);
        BondResult result = Engine.lay(request);
        Claims claims = new Claims(Double.parseDouble(arguments[2]));
        for (int index = 0; index < count; index++) {
            if (result.walls().get(index).optimal()) {
                claims.test(request, result, index);
            }
        }
        String text = claims.text(count, arguments[1] + " " + arguments[2]);
        Files.writeString(Path.of(arguments[3]), text);
        OUT.println(text);
        if (claims.count(Verdict.REFUTED) > 0) {
            System.exit(1);
        }
    }

    private void test(BondRequest request, BondResult result, int index) {
        WallFace wall = request.walls().get(index);
        WallLayout layout = result.walls().get(index);
        Handing handing = Handing.of(request.meetings(), result.throughOnOdd());
        Score score = Score.of(wall, handing, layout);
        Verdict verdict = GeneralModel.beat(wall, handing, score, limit);
        verdicts.merge(verdict, 1, Integer::sum);
        OUT.printf("%s %s %s%n", wall.mark(), score, verdict);
    }

    private int count(Verdict verdict) {
        return verdicts.getOrDefault(verdict, 0);
    }

    private String text(int count, String arguments) {
        return """
                # Bond engine: claims of optimality on full-sized walls

                Every wall of a hostile random building (`RandomWalls`) that the engine calls optimal is given to OR-Tools
                CP-SAT with the question whether a better layout exists, its corners handed alike.

                Made %s by

                    releng/benchmarks/run.sh claims %d %s

                %s

                | walls | |
                | --- | ---: |
                | laid | %d |
                | called optimal | %d |
                | ... confirmed: no better layout exists | %d |
                | ... refuted | %d |
                | ... undecided within the time | %d |
                """
                .formatted(RunOn.today(), count, arguments, RunOn.machine(), count,
                        verdicts.values().stream().mapToInt(Integer::intValue).sum(), count(Verdict.CONFIRMED),
                        count(Verdict.REFUTED), count(Verdict.UNDECIDED));
    }
}
