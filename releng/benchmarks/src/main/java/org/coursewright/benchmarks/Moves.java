package org.coursewright.benchmarks;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import org.coursewright.benchmarks.walls.MovedOpenings;
import org.coursewright.benchmarks.walls.RandomWalls;
import org.coursewright.bond.BondRequest;

/**
 * How long it takes to lay a wall again when one of its openings is moved. Arguments: seed of the sixty walls, report
 * file.
 */
public final class Moves {

    private static final PrintStream OUT = System.out;

    private Moves() {
    }

    public static void main(String[] arguments) throws IOException {
        BondRequest building = RandomWalls.of(Long.parseLong(arguments[0]), 60);
        List<BondRequest> moves = MovedOpenings.of(building, Engine.lay(building));
        moves.forEach(Engine::lay);
        double[] milliseconds = moves.stream().mapToDouble(move -> Engine.timed(move, 1).seconds() * 1000).sorted()
                .toArray();
        String text = text(milliseconds, arguments[0]);
        Files.writeString(Path.of(arguments[1]), text);
        OUT.println(text);
    }

    private static String text(double[] milliseconds, String seed) {
        return String.format(Locale.ROOT,
                """
                        # Bond engine: one opening moved

                        The first opening of every wall of at most 800 units of a hostile building of sixty walls (`RandomWalls`) is
                        moved by 1/4 to 2 in, its lintel with it, and the wall is laid afresh, handed as before. The goal is
                        16 ms for 95 of 100.

                        Made %s by

                            releng/benchmarks/run.sh moves %s

                        %s

                        | processor time (ms) | |
                        | --- | ---: |
                        | moves | %d |
                        | half of them within | %.1f |
                        | 90 of 100 within | %.1f |
                        | 95 of 100 within | %.1f |
                        | worst | %.1f |
                        """,
                RunOn.today(), seed, RunOn.machine(), milliseconds.length, within(milliseconds, 0.5),
                within(milliseconds, 0.9), within(milliseconds, 0.95), within(milliseconds, 1));
    }

    private static double within(double[] sorted, double share) {
        return sorted[(int) Math.ceil(share * sorted.length) - 1];
    }
}
