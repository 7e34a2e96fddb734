package org.coursewright.benchmarks;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import org.coursewright.benchmarks.oracle.LayoutVerifier;
import org.coursewright.benchmarks.walls.CoordinatedBuilding;
import org.coursewright.bond.BondRequest;
import org.coursewright.bond.WallLayout;

/** Lays sixty walls planned on the module, which can be closed without a cut. Argument: report file. */
public final class Coordinated {

    private static final PrintStream OUT = System.out;

    private Coordinated() {
    }

    public static void main(String[] arguments) throws IOException {
        BondRequest request = CoordinatedBuilding.request();
        Engine.Timed timed = Engine.timed(request, 3);
        List<String> faults = LayoutVerifier.faults(request, timed.result());
        faults.stream().limit(10).forEach(OUT::println);
        String text = text(timed, faults.size());
        Files.writeString(Path.of(arguments[0]), text);
        OUT.println(text);
        if (!faults.isEmpty()) {
            System.exit(1);
        }
    }

    private static String text(Engine.Timed timed, int faults) {
        List<WallLayout> walls = timed.result().walls();
        return String.format(Locale.ROOT,
                """
                        # Bond engine: sixty walls planned on the module

                        Fifteen rooms of four walls with openings (`CoordinatedBuilding`): units of 14 by 10 in, closers of 10 in in
                        stock, wall lengths, jambs and lintels on the module. With the right handing of its sixty corners the whole
                        building closes without a cut and without a short lap.

                        Made %s by

                            releng/benchmarks/run.sh coordinated

                        %s

                        | | |
                        | --- | ---: |
                        | walls | %d |
                        | called optimal | %d |
                        | without a cut | %d |
                        | cut pieces | %d |
                        | lap violations | %d |
                        | runs unfilled | %d |
                        | processor time (s) | %.2f |
                        | handing called optimal | %s |
                        | faults found by the verifier | %d |
                        """,
                RunOn.today(), RunOn.machine(), walls.size(),
                walls.stream().filter(WallLayout::optimal).count(),
                walls.stream().filter(wall -> wall.cutPieces() == 0).count(),
                walls.stream().mapToInt(WallLayout::cutPieces).sum(),
                walls.stream().mapToInt(WallLayout::lapViolations).sum(),
                walls.stream().mapToInt(wall -> wall.unfillable().size()).sum(), timed.seconds(),
                timed.result().handingOptimal() ? "yes" : "no", faults);
    }
}
