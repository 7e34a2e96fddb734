package org.coursewright.takeoff.range;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;

import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TriangularDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpreadTest {

    /** The usual PERT mean (a + 4m + b) ÷ 6; the published foundry network has such activities. */
    @ParameterizedTest
    @CsvSource({"1, 2, 3, 2", "2, 4, 6, 4", "1, 4, 7, 4", "1, 2, 9, 3", "3, 4, 11, 5"})
    void pertHasItsPublishedMean(double low, double mode, double high, double mean) {
        assertThat(Pert.of(low, mode, high).mean()).isCloseTo(mean, within(1e-12));
    }

    /**
     * The usual variance ((b − a) ÷ 6)² is an approximation; the beta distribution has 5/7 to 9/7 of it, and for a mode in the
     * middle exactly 36/28.
     */
    @Test
    void pertVarianceIsThatOfTheBetaDistribution() {
        assertThat(Pert.of(0, 3, 6).variance()).isCloseTo(36.0 / 28, within(1e-12));
        assertThat(Pert.of(0, 0, 6).variance()).isCloseTo(5.0 / 7, within(1e-12));
    }

    /** (a + m + b) ÷ 3 and (a² + m² + b² − am − ab − mb) ÷ 18, as in any textbook. */
    @Test
    void triangularHasItsPublishedMoments() {
        Triangular spread = new Triangular(2, 3, 10);
        assertThat(spread.mean()).isCloseTo(5, within(1e-12));
        assertThat(spread.variance()).isCloseTo((4 + 9 + 100 - 6 - 20 - 30) / 18.0, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"2, 3, 10", "2, 2, 10", "2, 10, 10", "-5, 0, 1"})
    void triangularValuesAgreeWithTheLibrary(double low, double mode, double high) {
        DoubleUnaryOperator fromNormal = new Triangular(low, mode, high).fromNormal();
        TriangularDistribution reference = TriangularDistribution.of(low, mode, high);
        NormalDistribution normal = NormalDistribution.of(0, 1);
        for (double z = -5; z <= 5; z += 0.0413) {
            double expected = z < 0
                    ? reference.inverseCumulativeProbability(normal.cumulativeProbability(z))
                    : reference.inverseSurvivalProbability(normal.survivalProbability(z));
            assertThat(fromNormal.applyAsDouble(z)).isCloseTo(expected, within(1e-6 * (high - low)));
        }
    }

    /** Mean and variance by integrating over the normal density, in steps of 1/200. */
    @ParameterizedTest
    @CsvSource({"10, 20, 60", "10, 10, 60", "10, 60, 60"})
    void valuesHaveTheMomentsThatAreClaimed(double low, double mode, double high) {
        for (Spread spread : new Spread[]{Pert.of(low, mode, high), new Triangular(low, mode, high), new Pert(low, mode,
                high, 2), new Certain(mode)}) {
            DoubleUnaryOperator fromNormal = spread.fromNormal();
            double mean = 0;
            double square = 0;
            for (int i = -1600; i <= 1600; i++) {
                double weight = Math.exp(-i * i / 80_000.0) / Math.sqrt(2 * Math.PI) / 200;
                double value = fromNormal.applyAsDouble(i / 200.0);
                mean += weight * value;
                square += weight * value * value;
            }
            assertThat(mean).isCloseTo(spread.mean(), within(1e-4));
            assertThat(square - mean * mean).isCloseTo(spread.variance(), within(1e-2));
        }
    }

    @Test
    void spreadIsScaledAsAWhole() {
        assertThat(Pert.of(1, 2, 4).times(3)).isEqualTo(Pert.of(3, 6, 12));
        assertThat(new Triangular(1, 2, 4).times(3)).isEqualTo(new Triangular(3, 6, 12));
        assertThat(new Certain(2).times(3)).isEqualTo(new Certain(6));
    }

    @Test
    void estimateWithoutWidthIsItsValue() {
        assertThat(Pert.of(5, 5, 5).fromNormal().applyAsDouble(1.3)).isEqualTo(5);
        assertThat(new Triangular(5, 5, 5).fromNormal().applyAsDouble(-1.3)).isEqualTo(5);
    }

    @Test
    void estimateThatDoesNotRiseIsRefusedWithItsValues() {
        assertThatThrownBy(() -> Pert.of(5, 4, 9)).hasMessageContaining("5.0 – 4.0 – 9.0");
        assertThatThrownBy(() -> new Triangular(1, Double.NaN, 9)).hasMessageContaining("NaN");
    }
}
