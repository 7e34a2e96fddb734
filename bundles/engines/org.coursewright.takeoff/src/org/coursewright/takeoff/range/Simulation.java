package org.coursewright.takeoff.range;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;

import org.coursewright.measure.Progress;
import org.coursewright.takeoff.range.internal.NormalStream;

/** One run: draws totals, and on the way how each line goes with the total. */
final class Simulation {

    /** Tenth percentile of the standard normal distribution, negative of the ninetieth (Abramowitz and Stegun, 26.2). */
    private static final double TENTH = -1.2815515655446004;
    private static final int BETWEEN_REPORTS = 4096;
    /** Keeps the streams of lines apart from those of sources. */
    private static final long FIRST_LINE = 1L << 32;

    private final CostSimulation input;
    private final int count;
    private final int[] sourceOf;
    private final List<String> sources;
    private final double[] common;
    private final double[] own;
    private final double[] mean;
    private final DoubleUnaryOperator[] values;
    private final double[] covariance;

    Simulation(CostSimulation input) {
        this.input = input;
        count = input.lines().size();
        sources = input.lines().stream().map(UncertainLine::source).distinct().toList();
        sourceOf = new int[count];
        common = new double[count];
        own = new double[count];
        mean = new double[count];
        values = new DoubleUnaryOperator[count];
        covariance = new double[count];
        for (int line = 0; line < count; line++) {
            UncertainLine uncertain = input.lines().get(line);
            double correlation = input.correlation().getOrDefault(uncertain.source(), 0.0);
            sourceOf[line] = sources.indexOf(uncertain.source());
            common[line] = Math.sqrt(correlation);
            own[line] = Math.sqrt(1 - correlation);
            mean[line] = uncertain.spread().mean();
            values[line] = uncertain.spread().fromNormal();
        }
    }

    CostRange run(Progress progress) {
        double[] totals = draw(progress);
        List<Driver> lines = new ArrayList<>();
        Map<String, Driver> bySource = new LinkedHashMap<>();
        double total = sum(mean);
        double variance = sum(covariance);
        for (int line = 0; line < count; line++) {
            double share = variance == 0 ? 0 : covariance[line] / variance;
            double low = values[line].applyAsDouble(TENTH) - mean[line];
            double high = values[line].applyAsDouble(-TENTH) - mean[line];
            lines.add(new Driver(input.lines().get(line).id(), total + low, total + high, share));
            bySource.merge(sources.get(sourceOf[line]), new Driver(sources.get(sourceOf[line]), total + low, total
                    + high, share),
                    (old, more) -> new Driver(old.name(), old.low() + low, old.high() + high, old
                            .contribution() + share));
        }
        return new CostRange(totals, widestFirst(lines), widestFirst(new ArrayList<>(bySource.values())));
    }

    private double[] draw(Progress progress) {
        NormalStream[] ofSources = streams(sources.size(), 0);
        NormalStream[] ofLines = streams(count, FIRST_LINE);
        double[] totals = new double[input.draws()];
        double[] factors = new double[sources.size()];
        double[] apart = new double[count];
        double expected = sum(mean);
        for (int draw = 0; draw < totals.length; draw++) {
            if (draw % BETWEEN_REPORTS == 0) {
                progress.checkCancelled();
                progress.done((double) draw / totals.length);
            }
            for (int source = 0; source < factors.length; source++) {
                factors[source] = ofSources[source].next();
            }
            double off = 0;
            for (int line = 0; line < count; line++) {
                double normal = common[line] * factors[sourceOf[line]] + own[line] * ofLines[line].next();
                apart[line] = values[line].applyAsDouble(normal) - mean[line];
                off += apart[line];
            }
            addToCovariance(apart, off);
            totals[draw] = expected + off;
        }
        return totals;
    }

    private void addToCovariance(double[] apart, double off) {
        for (int line = 0; line < count; line++) {
            covariance[line] += apart[line] * off;
        }
    }

    private NormalStream[] streams(int number, long first) {
        NormalStream[] streams = new NormalStream[number];
        for (int i = 0; i < number; i++) {
            streams[i] = new NormalStream(input.seed(), first + i);
        }
        return streams;
    }

    private static List<Driver> widestFirst(List<Driver> drivers) {
        drivers.sort(Comparator.comparingDouble(Driver::swing).reversed().thenComparing(Driver::name));
        return drivers;
    }

    private static double sum(double[] terms) {
        double sum = 0;
        for (double term : terms) {
            sum += term;
        }
        return sum;
    }
}
