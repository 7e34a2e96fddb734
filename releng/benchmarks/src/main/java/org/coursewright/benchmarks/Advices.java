package org.coursewright.benchmarks;

import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.coursewright.benchmarks.oracle.LayoutVerifier;
import org.coursewright.benchmarks.walls.Adjustables;
import org.coursewright.benchmarks.walls.CoordinatedBuilding;
import org.coursewright.benchmarks.walls.RandomWalls;
import org.coursewright.bond.BondRequest;
import org.coursewright.bond.BondResult;
import org.coursewright.bond.BondSolver;
import org.coursewright.bond.advice.Advice;
import org.coursewright.bond.advice.AdviceRequest;
import org.coursewright.bond.advice.BondAdvisor;
import org.coursewright.bond.advice.ProfilePoint;
import org.coursewright.measure.Length;
import org.coursewright.measure.Progress;

/**
 * How long advice on sixty walls takes, what it spares, and whether it comes true. Arguments: seed of the random walls,
 * report file.
 */
public final class Advices {

    private static final PrintStream OUT = System.out;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
    private static final Length QUARTER_INCH = Length.ofInchFraction(1, 4);

    private final StringBuilder rows = new StringBuilder();
    private int broken;

    private Advices() {
    }

    public static void main(String[] arguments) throws IOException {
        Advices advices = new Advices();
        advices.measure("on the module (`CoordinatedBuilding`)", CoordinatedBuilding.request());
        advices.measure("hostile (`RandomWalls`)", RandomWalls.of(Long.parseLong(arguments[0]), 60));
        String text = advices.text(arguments[0]);
        Files.writeString(Path.of(arguments[1]), text);
        OUT.println(text);
        if (advices.broken > 0) {
            System.exit(1);
        }
    }

    private void measure(String name, BondRequest building) {
        AdviceRequest request = new AdviceRequest(building, Adjustables.of(building), List.of(), QUARTER_INCH,
                Optional.empty());
        long started = THREADS.getCurrentThreadCpuTime();
        Advice advice = BondAdvisor.standard().advise(request, Progress.NONE);
        double seconds = (THREADS.getCurrentThreadCpuTime() - started) / 1e9;
        BondResult again = BondSolver.standard().solve(advice.changed(), Progress.NONE);
        boolean kept = again.equals(advice.after())
                && LayoutVerifier.faults(advice.changed(), again).isEmpty();
        broken += kept ? 0 : 1;
        List<ProfilePoint> points = advice.profiles().stream().flatMap(profile -> profile.points().stream()).toList();
        long laid = points.stream().filter(point -> point.basis() == ProfilePoint.Basis.LAID).count();
        rows.append(String.format(Locale.ROOT, "| %s | %d | %d | %d | %s | %s | %d | %s | %.1f |%n", name,
                request.adjustables().size(), points.size(), laid, counts(advice.before()), counts(advice.after()),
                advice.proposals().size(), kept ? "yes" : "NO", seconds));
    }

    private static String counts(BondResult result) {
        return result.lapViolations() + " / " + result.cutPieces();
    }

    private String text(String seed) {
        return """
                # Bond engine: dimensions that spare cuts

                Every opening of sixty walls may move by 7 in either way, every free end of a wall too, in steps of 1/4 in,
                without a budget. Bounded are all values, laid those that promise most. "Kept": the building with all changes
                made, laid afresh by a solver that knows nothing of the advice, comes to what was promised, and the verifier
                finds no fault in it. The goal is 2 s for the hostile building.

                Made %s by

                    releng/benchmarks/run.sh advice %s

                %s

                | sixty walls | dimensions | values | laid | before (laps short / cuts) | after | changes | kept | processor time (s) |
                | --- | ---: | ---: | ---: | ---: | ---: | ---: | --- | ---: |
                %s"""
                .formatted(RunOn.today(), seed, RunOn.machine(), rows);
    }
}
