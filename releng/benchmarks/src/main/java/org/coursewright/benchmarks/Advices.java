package org.coursewright.benchmarks;

import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.coursewright.benchmarks.oracle.LayoutVerifier;
import org.coursewright.benchmarks.walls.Adjustables;
import org.coursewright.benchmarks.walls.CoordinatedBuilding;
import org.coursewright.benchmarks.walls.MovedOpenings;
import org.coursewright.benchmarks.walls.RandomWalls;
import org.coursewright.bond.BondRequest;
import org.coursewright.bond.BondResult;
import org.coursewright.bond.BondSolver;
import org.coursewright.bond.advice.Adjustable;
import org.coursewright.bond.advice.Advice;
import org.coursewright.bond.advice.AdviceRequest;
import org.coursewright.bond.advice.BondAdvisor;
import org.coursewright.bond.advice.ProfilePoint;
import org.coursewright.bond.advice.ProfileRequest;
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
        BondRequest coordinated = CoordinatedBuilding.request();
        BondRequest hostile = RandomWalls.of(Long.parseLong(arguments[0]), 60);
        warmUp(RandomWalls.of(Long.parseLong(arguments[0]) + 1, 20));
        advices.measure("on the module (`CoordinatedBuilding`)", coordinated, Optional.empty());
        advices.measure("on the module, openings 1 in off it", MovedOpenings.off(coordinated), Optional.empty());
        advices.measure("hostile (`RandomWalls`)", hostile, Optional.empty());
        advices.measure("hostile, 12 in in all", hostile, Optional.of(Length.ofInches(12)));
        String text = advices.text(arguments[0], hurried(hostile));
        Files.writeString(Path.of(arguments[1]), text);
        OUT.println(text);
        if (advices.broken > 0) {
            System.exit(1);
        }
    }

    private static void warmUp(BondRequest building) {
        BondAdvisor.standard().advise(request(building, Optional.empty()), Progress.NONE);
    }

    private static AdviceRequest request(BondRequest building, Optional<Length> budget) {
        return new AdviceRequest(building, Adjustables.of(building), List.of(), QUARTER_INCH, budget);
    }

    /** Milliseconds for every opening looked at by itself, from the layout at hand, ascending. */
    private static List<Double> hurried(BondRequest building) {
        BondResult laid = BondSolver.standard().solve(building, Progress.NONE);
        List<Double> times = new ArrayList<>();
        for (Adjustable adjustable : Adjustables.of(building)) {
            if (adjustable.opening().isPresent()) {
                long started = THREADS.getCurrentThreadCpuTime();
                BondAdvisor.standard().profile(
                        new ProfileRequest(building, laid, adjustable, List.of(), QUARTER_INCH), Progress.NONE);
                times.add(seconds(started) * 1000);
            }
        }
        times.sort(Comparator.naturalOrder());
        return times;
    }

    private void measure(String name, BondRequest building, Optional<Length> budget) {
        AdviceRequest request = request(building, budget);
        BondSolver solver = BondSolver.remembering();
        try (HeapWatch heap = HeapWatch.start()) {
            long begun = THREADS.getCurrentThreadCpuTime();
            solver.solve(building, Progress.NONE);
            double laying = seconds(begun);
            Advice advice = BondAdvisor.of(solver).advise(request, Progress.NONE);
            double both = seconds(begun);
            rows.append(String.format(Locale.ROOT, "| %s | %d | %s | %s | %s | %d | %s | %.1f | %.1f | %.1f | %.0f |%n",
                    name, request.adjustables().size(), points(advice), counts(advice.before()), counts(advice.after()),
                    advice.proposals().size(), isKept(advice) ? "yes" : "NO", laying, both - laying, both,
                    heap.most()));
        }
    }

    private static double seconds(long started) {
        return (THREADS.getCurrentThreadCpuTime() - started) / 1e9;
    }

    private boolean isKept(Advice advice) {
        BondResult again = BondSolver.standard().solve(advice.changed(), Progress.NONE);
        boolean kept = again.equals(advice.after()) && LayoutVerifier.faults(advice.changed(), again).isEmpty();
        broken += kept ? 0 : 1;
        return kept;
    }

    private static String points(Advice advice) {
        int[] bases = new int[ProfilePoint.Basis.values().length];
        advice.profiles().forEach(profile -> profile.points().forEach(point -> bases[point.basis().ordinal()]++));
        return bases[0] + " / " + bases[1] + " / " + bases[2];
    }

    private static String counts(BondResult result) {
        return result.lapViolations() + " / " + result.cutPieces();
    }

    private String text(String seed, List<Double> hurried) {
        return """
                # Bond engine: dimensions that spare cuts

                Every opening of sixty walls may move by 7 in either way, every free end of a wall too, in steps of 1/4 in.
                All values are bounded, most are fitted, those that promise most are laid. "Kept": the building with all
                changes made, laid afresh by a solver that knows nothing of the advice, comes to what was promised, and the
                verifier finds no fault in it. "Laying" is what laying the building as planned takes, "advice" what it takes then,
                as in the workbench, where the building is laid before anybody asks; `fit` has to do both. Times are of the
                processor, after a warm-up with other walls; memory is the most in use after a garbage collection. The goal is
                2 s and 256 MB.

                Made %s by

                    releng/benchmarks/run.sh advice %s

                %s

                | sixty walls | dimensions | values laid / fitted / bounded | before (laps short / cuts) | after | changes | kept | laying (s) | advice (s) | both (s) | memory (MB) |
                | --- | ---: | ---: | ---: | ---: | ---: | --- | ---: | ---: | ---: | ---: |
                %s
                Looked at by itself from the layout at hand, as while somebody drags it, an opening of the hostile walls takes
                %.1f ms in the middle of %d, %.1f ms at the 95th percentile, %.1f ms at most. The goal is 100 ms.
                """
                .formatted(RunOn.today(), seed, RunOn.machine(), rows, hurried.get(hurried.size() / 2),
                        hurried.size(), hurried.get(hurried.size() * 95 / 100), hurried.get(hurried.size() - 1));
    }
}
