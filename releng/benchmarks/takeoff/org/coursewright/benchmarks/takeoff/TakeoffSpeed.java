package org.coursewright.benchmarks.takeoff;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

import org.coursewright.core.bond.LayoutOutcome;
import org.coursewright.core.bond.LayoutResults;
import org.coursewright.core.cost.PriceOutcome;
import org.coursewright.core.cost.PriceResults;
import org.coursewright.core.derive.DerivationGraph;
import org.coursewright.core.takeoff.TakeoffOutcome;
import org.coursewright.core.takeoff.TakeoffResults;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Opening;
import org.coursewright.model.project.Project;

/** How long take-off, price and simulation of a building of 20,000 units take, once it is laid. */
final class TakeoffSpeed {

    private static final int ROUNDS = 15;
    private static final int WARM_UP = 5;
    private static final double NANOS = 1e6;

    private final Project project = LargeEstimate.project();
    private final DerivationGraph graph = new DerivationGraph(project);

    private final List<Double> takeoff = new ArrayList<>();
    private final List<Double> price = new ArrayList<>();
    private final List<Double> range = new ArrayList<>();

    private TakeoffSpeed() {
    }

    public static void main(String[] args) throws IOException {
        String report = new TakeoffSpeed().report();
        Files.writeString(Path.of(args[0]), report);
    }

    private String report() {
        Opening opening = project.getBuilding().getStoreys().get(0).getWalls().get(0).getOpenings().get(0);
        LayoutOutcome layout = graph.get(LayoutResults.LAYOUT);
        double cold = time(() -> graph.get(TakeoffResults.TAKEOFF)) + time(() -> graph.get(PriceResults.PRICE));
        for (int round = 0; round < ROUNDS; round++) {
            opening.setOffset(Length.ofInches(80 + round));
            graph.get(LayoutResults.LAYOUT);
            double taken = time(() -> graph.get(TakeoffResults.TAKEOFF));
            double priced = time(() -> graph.get(PriceResults.PRICE));
            double ranged = time(() -> graph.get(PriceResults.RANGE));
            if (round >= WARM_UP) {
                takeoff.add(taken);
                price.add(taken + priced);
                range.add(ranged);
            }
        }
        TakeoffOutcome outcome = graph.get(TakeoffResults.TAKEOFF);
        PriceOutcome priced = graph.get(PriceResults.PRICE);
        graph.close();
        return """
                # Take-off and price of a large building

                Written by `releng/benchmarks/run.sh takeoff`: %d walls, %d pieces, %d lines of price, %d draws. Processor times of
                the calling thread in milliseconds, the layout not counted; the median of %d edits that each move one opening, after
                %d to warm up.

                | what | median | worst | goal |
                | --- | --- | --- | --- |
                | take-off after one opening moved | %.1f | %.1f | 50 |
                | take-off and price after one opening moved | %.1f | %.1f | 50 |
                | take-off and price in a program just started | %.1f | | 300 |
                | simulation of 100,000 draws | %.1f | %.1f | 1000 |
                """.formatted(outcome.walls().size(), layout.totals().total(), priced.lines().size(), 100_000,
                takeoff.size(), WARM_UP, median(takeoff), worst(takeoff), median(price), worst(price), cold, median(range),
                worst(range));
    }

    private static double time(Supplier<?> work) {
        long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        work.get();
        return (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before) / NANOS;
    }

    private static double median(List<Double> times) {
        return times.stream().sorted().skip(times.size() / 2).findFirst().orElseThrow();
    }

    private static double worst(List<Double> times) {
        return times.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
    }
}
