package org.coursewright.takeoff.range;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.function.DoubleUnaryOperator;

import org.coursewright.measure.Progress;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CostSimulationTest {

    private static final int DRAWS = CostSimulation.USUAL_DRAWS;

    @Test
    void independentLinesAddTheirMeansAndVariances() {
        List<UncertainLine> lines = List.of(line("block", "press", Pert.of(900, 1000, 1400)), line("mason", "crew",
                new Triangular(1500, 1800, 3000)), line("permit", "town", new Certain(250)));
        CostRange range = run(lines, Map.of());
        double variance = lines.stream().mapToDouble(line -> line.spread().variance()).sum();
        double mean = lines.stream().mapToDouble(line -> line.spread().mean()).sum();
        assertThat(range.mean()).isCloseTo(mean, within(4 * Math.sqrt(variance / DRAWS)));
        assertThat(range.standardDeviation()).isCloseTo(Math.sqrt(variance), within(0.02 * Math.sqrt(variance)));
    }

    /** A single line's percentiles are those of its distribution: triangular 0, 0, 1 has 1 − √(1 − p). */
    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.5, 0.8, 0.9})
    void percentilesOfOneLineAreThoseOfItsDistribution(double share) {
        CostRange range = run(List.of(line("a", "s", new Triangular(0, 0, 1))), Map.of());
        double expected = 1 - Math.sqrt(1 - share);
        double density = 2 * (1 - expected);
        assertThat(range.percentile(share)).isCloseTo(expected, within(4 * Math.sqrt(share * (1 - share) / DRAWS)
                / density));
        assertThat(range.oddsOf(expected)).isCloseTo(share, within(4 * Math.sqrt(0.25 / DRAWS)));
    }

    /** The sum of many independent lines is about normal: P90 lies 1.2816 standard deviations above the mean. */
    @Test
    void sumOfManyLinesIsAboutNormal() {
        List<UncertainLine> lines = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            lines.add(line("l" + i, "s" + i, new Triangular(0, 5, 10)));
        }
        CostRange range = run(lines, Map.of());
        double deviation = Math.sqrt(60 * lines.get(0).spread().variance());
        assertThat(range.percentile(0.9)).isCloseTo(300 + 1.2816 * deviation, within(0.02 * deviation));
        assertThat(range.percentile(0.1)).isCloseTo(300 - 1.2816 * deviation, within(0.02 * deviation));
    }

    /** With correlation 1, everything of a source is at the same percentile at once, and so is the sum. */
    @Test
    void fullyCorrelatedLinesReachTheirPercentilesTogether() {
        Spread spread = Pert.of(10, 20, 60);
        CostRange one = run(List.of(line("a", "s", spread)), Map.of("s", 1.0));
        CostRange three = run(List.of(line("a", "s", spread), line("b", "s", spread), line("c", "s", spread.times(2))),
                Map.of("s", 1.0));
        for (double share : new double[]{0.1, 0.5, 0.8, 0.9}) {
            assertThat(three.percentile(share)).isCloseTo(4 * one.percentile(share), within(1e-6));
        }
    }

    /** The variance of two correlated lines, against integrating over the two-dimensional normal density on a grid. */
    @ParameterizedTest
    @ValueSource(doubles = {0.3, 0.7})
    void correlationOfASourceIsThatOfTheCopula(double correlation) {
        Spread first = new Triangular(0, 1, 8);
        Spread second = Pert.of(2, 3, 12);
        CostRange range = run(List.of(line("a", "s", first), line("b", "s", second)), Map.of("s", correlation));
        double expected = first.variance() + second.variance() + 2 * covariance(first, second, correlation);
        assertThat(Math.pow(range.standardDeviation(), 2)).isCloseTo(expected, within(0.02 * expected));
    }

    @Test
    void tornadoPutsTheWidestFirstAndItsSharesAddUpToOne() {
        List<UncertainLine> lines = List.of(line("small", "crew", new Triangular(9, 10, 11)), line("large", "press",
                new Triangular(50, 100, 150)), line("none", "town", new Certain(7)),
                line("middle", "crew",
                        new Triangular(20, 30, 40)));
        CostRange range = run(lines, Map.of("crew", 0.5));
        assertThat(range.lines()).extracting(Driver::name).containsExactly("large", "middle", "small", "none");
        assertThat(range.sources()).extracting(Driver::name).containsExactly("press", "crew", "town");
        assertThat(range.lines().stream().mapToDouble(Driver::contribution).sum()).isCloseTo(1, within(1e-12));
        assertThat(range.sources().stream().mapToDouble(Driver::contribution).sum()).isCloseTo(1, within(1e-12));
        // P10 and P90 of a symmetric triangle: √(p ÷ 2) of its width from its end; the expected total is 147
        double tenth = 50 + 100 * Math.sqrt(0.05);
        assertThat(range.lines().get(0).low()).isCloseTo(147 - 100 + tenth, within(1e-6));
        assertThat(range.lines().get(0).high()).isCloseTo(147 + 100 - tenth, within(1e-6));
        assertThat(range.sources().get(1).swing()).isCloseTo(range.lines().get(1).swing() + range.lines().get(2)
                .swing(), within(1e-9));
    }

    @Test
    void contributionOfIndependentLinesIsTheirShareOfTheVariance() {
        CostRange range = run(List.of(line("a", "s", new Triangular(0, 10, 20)), line("b", "t", new Triangular(0, 20,
                40))), Map.of());
        assertThat(range.lines().get(0).contribution()).isCloseTo(0.8, within(0.01));
    }

    @Test
    void sameSeedGivesTheSameRangeAndAnotherSeedAnother() {
        List<UncertainLine> lines = List.of(line("a", "s", Pert.of(1, 2, 5)));
        CostRange first = new CostSimulation(lines, Map.of(), 1000, 1).run(Progress.NONE);
        assertThat(new CostSimulation(lines, Map.of(), 1000, 1).run(Progress.NONE).percentile(0.8)).isEqualTo(first
                .percentile(0.8));
        assertThat(new CostSimulation(lines, Map.of(), 1000, 2).run(Progress.NONE).percentile(0.8)).isNotEqualTo(first
                .percentile(0.8));
    }

    @Test
    void lineAddedAtTheEndLeavesTheDrawsOfTheOthers() {
        UncertainLine line = line("a", "s", Pert.of(1, 2, 5));
        CostRange alone = run(List.of(line), Map.of("s", 0.4));
        CostRange with = run(List.of(line, line("b", "t", new Certain(10))), Map.of("s", 0.4));
        assertThat(with.percentile(0.8)).isCloseTo(alone.percentile(0.8) + 10, within(1e-9));
    }

    @Test
    void linesThatAreAllCertainHaveNoRange() {
        CostRange range = run(List.of(line("a", "s", new Certain(3)), line("b", "s", new Certain(4))), Map.of());
        assertThat(range.percentile(0)).isEqualTo(7).isEqualTo(range.percentile(1));
        assertThat(range.lines()).extracting(Driver::contribution).containsOnly(0.0);
    }

    @Test
    void correlationOutOfRangeIsRefusedNamingTheSource() {
        assertThatThrownBy(() -> run(List.of(line("a", "s", new Certain(1))), Map.of("crew", 1.2)))
                .hasMessageContaining("crew").hasMessageContaining("1.2");
    }

    @Test
    void twoLinesOfOneIdAreRefused() {
        UncertainLine line = line("a", "s", new Certain(1));
        assertThatThrownBy(() -> run(List.of(line, line), Map.of())).hasMessageContaining("called a");
    }

    @Test
    void simulationThatIsNoLongerWantedIsGivenUp() {
        Progress cancelled = Progress.until(() -> true);
        CostSimulation simulation = new CostSimulation(List.of(line("a", "s", new Certain(1))), Map.of(), 10, 1);
        assertThatThrownBy(() -> simulation.run(cancelled)).isInstanceOf(CancellationException.class);
    }

    private static double covariance(Spread first, Spread second, double correlation) {
        DoubleUnaryOperator x = first.fromNormal();
        DoubleUnaryOperator y = second.fromNormal();
        double step = 0.05;
        double rest = 1 - correlation * correlation;
        double sum = 0;
        for (double u = -7; u <= 7; u += step) {
            for (double v = -7; v <= 7; v += step) {
                double density = Math.exp(-(u * u - 2 * correlation * u * v + v * v) / (2 * rest)) / (2 * Math.PI * Math
                        .sqrt(rest));
                sum += density * (x.applyAsDouble(u) - first.mean()) * (y.applyAsDouble(v) - second.mean());
            }
        }
        return sum * step * step;
    }

    private static UncertainLine line(String id, String source, Spread spread) {
        return new UncertainLine(id, source, spread);
    }

    private static CostRange run(List<UncertainLine> lines, Map<String, Double> correlation) {
        return new CostSimulation(lines, correlation, DRAWS, 20261125).run(Progress.NONE);
    }
}
