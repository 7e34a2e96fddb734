package org.coursewright.benchmarks;

import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.coursewright.benchmarks.walls.MovedOpenings;
import org.coursewright.benchmarks.walls.RandomWalls;
import org.coursewright.bond.BondRequest;
import org.coursewright.bond.BondResult;
import org.coursewright.bond.BondSolver;
import org.coursewright.measure.Progress;

/**
 * How long a building takes to be laid again when one of its openings is moved: until the first answer, and until the
 * answer. Arguments: seed of the sixty walls, report file.
 */
public final class Moves {

    private static final PrintStream OUT = System.out;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private final BondSolver solver = BondSolver.remembering();
    private final BondRequest building;
    private final List<Double> first = new ArrayList<>();
    private final List<Double> full = new ArrayList<>();
    private int firstIsBest;

    private Moves(BondRequest building) {
        this.building = building;
    }

    public static void main(String[] arguments) throws IOException {
        Moves moves = new Moves(RandomWalls.of(Long.parseLong(arguments[0]), 60));
        moves.measure();
        String text = moves.text(arguments[0]);
        Files.writeString(Path.of(arguments[1]), text);
        OUT.println(text);
    }

    /** Between two moves the building is as planned again, as far as the solver remembers. */
    private void measure() {
        List<BondRequest> moves = MovedOpenings.of(building, solver.solve(building, Progress.NONE));
        for (int index = 0; index < moves.size(); index++) {
            BondRequest move = moves.get(index);
            long started = THREADS.getCurrentThreadCpuTime();
            BondResult soon = solver.first(move, Progress.NONE);
            first.add(milliseconds(started));
            if (index % MovedOpenings.STEPS == 0) {
                started = THREADS.getCurrentThreadCpuTime();
                BondResult answer = solver.solve(move, Progress.NONE);
                full.add(milliseconds(started));
                firstIsBest += isAsGood(soon, answer) ? 1 : 0;
                solver.solve(building, Progress.NONE);
            }
        }
    }

    private static double milliseconds(long started) {
        return (THREADS.getCurrentThreadCpuTime() - started) / 1e6;
    }

    private static boolean isAsGood(BondResult one, BondResult other) {
        return one.lapViolations() == other.lapViolations() && one.cutPieces() == other.cutPieces();
    }

    private String text(String seed) {
        return String.format(Locale.ROOT,
                """
                        # Bond engine: one opening moved

                        The first opening of every wall of at most 800 units of a hostile building of sixty walls (`RandomWalls`) is
                        moved by 1/4 to 2 in, its lintel with it, and the building is laid again by a solver that remembers it: first
                        with its corners handed as they were, then for the best. The goal is a first answer within 16 ms for 95 of
                        100.

                        Made %s by

                            releng/benchmarks/run.sh moves %s

                        %s

                        | processor time (ms) | first answer | answer |
                        | --- | ---: | ---: |
                        | moves | %d | %d |
                        %s| as good as the answer | %d of %d | |
                        """,
                RunOn.today(), seed, RunOn.machine(), first.size(), full.size(), rows(), firstIsBest, full.size());
    }

    private String rows() {
        return row("half of them within", 0.5) + row("90 of 100 within", 0.9) + row("95 of 100 within", 0.95)
                + row("worst", 1);
    }

    private String row(String title, double share) {
        return String.format(Locale.ROOT, "| %s | %.1f | %.1f |%n", title, within(first, share), within(full, share));
    }

    private static double within(List<Double> times, double share) {
        List<Double> sorted = times.stream().sorted().toList();
        return sorted.get((int) Math.ceil(share * sorted.size()) - 1);
    }
}
