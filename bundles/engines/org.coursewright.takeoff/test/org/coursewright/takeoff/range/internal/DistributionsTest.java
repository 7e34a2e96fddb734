package org.coursewright.takeoff.range.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.function.DoubleUnaryOperator;

import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against Apache Commons Statistics. */
class DistributionsTest {

    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

    @Test
    void normalDistributionAgreesInTheMiddleAndInBothTails() {
        for (double z = -8; z <= 8; z += 0.0373) {
            assertThat(StandardNormal.cumulative(z)).isCloseTo(NORMAL.cumulativeProbability(z), withinPercentage(
                    1e-10));
            assertThat(StandardNormal.density(z)).isCloseTo(NORMAL.density(z), withinPercentage(1e-10));
        }
    }

    @Test
    void tableOfTheNormalDistributionIsCloseBetweenItsPoints() {
        DoubleUnaryOperator table = StandardNormal.table();
        for (double z = -9; z <= 9; z += 0.00771) {
            assertThat(table.applyAsDouble(z)).isCloseTo(NORMAL.cumulativeProbability(z), within(2e-9));
        }
    }

    @ParameterizedTest
    @CsvSource({"1, 5", "5, 1", "3, 3", "1, 1", "2.2, 3.8", "1.001, 4.999", "1.5, 30"})
    void betaDistributionAgrees(double first, double second) {
        Beta beta = new Beta(first, second);
        BetaDistribution reference = BetaDistribution.of(first, second);
        for (double x = 0.001; x < 1; x += 0.00917) {
            assertThat(beta.cumulative(x)).isCloseTo(reference.cumulativeProbability(x), within(1e-13));
            assertThat(beta.density(x)).isCloseTo(reference.density(x), withinPercentage(1e-9));
        }
        assertThat(beta.cumulative(0)).isZero();
        assertThat(beta.cumulative(1)).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource({"1, 5", "5, 1", "3, 3", "1, 1", "2.2, 3.8", "1.001, 4.999", "1.5, 30"})
    void betaValuesOfNormalValuesAgree(double first, double second) {
        DoubleUnaryOperator fromNormal = new Beta(first, second).fromNormal();
        BetaDistribution reference = BetaDistribution.of(first, second);
        double before = 0;
        for (double z = -6; z <= 6; z += 0.0191) {
            double expected = z < 0
                    ? reference.inverseCumulativeProbability(NORMAL.cumulativeProbability(z))
                    : reference.inverseSurvivalProbability(NORMAL.survivalProbability(z));
            double value = fromNormal.applyAsDouble(z);
            assertThat(value).isCloseTo(expected, within(1e-7)).isGreaterThanOrEqualTo(before);
            before = value;
        }
    }

    @Test
    void quantileUndoesTheDistribution() {
        Beta beta = new Beta(2.5, 3.5);
        for (double share = 0.001; share < 1; share += 0.013) {
            assertThat(beta.cumulative(beta.quantile(share))).isCloseTo(share, within(1e-12));
        }
    }

    /** The first numbers of the seed 1234567, as published with many implementations of SplitMix64; from memory. */
    @Test
    void randomBitsAreThoseOfSplitMix() {
        SplitMix random = new SplitMix(1234567);
        assertThat(Long.toUnsignedString(random.next())).isEqualTo("6457827717110365317");
        assertThat(Long.toUnsignedString(random.next())).isEqualTo("3203168211198807973");
        assertThat(Long.toUnsignedString(random.next())).isEqualTo("9817491932198370423");
        assertThat(Long.toUnsignedString(random.next())).isEqualTo("4593380528125082431");
        assertThat(Long.toUnsignedString(random.next())).isEqualTo("16408922859458223821");
    }

    /** Moments of 400 000 draws within four standard errors, and every tenth percentile where it belongs. */
    @Test
    void normalStreamIsStandardNormal() {
        NormalStream stream = new NormalStream(42, 7);
        int draws = 400_000;
        double sum = 0;
        double squares = 0;
        int[] tenths = new int[10];
        for (int i = 0; i < draws; i++) {
            double normal = stream.next();
            sum += normal;
            squares += normal * normal;
            tenths[(int) (10 * StandardNormal.cumulative(normal))]++;
        }
        assertThat(sum / draws).isCloseTo(0, within(4 / Math.sqrt(draws)));
        assertThat(squares / draws).isCloseTo(1, within(4 * Math.sqrt(2.0 / draws)));
        double chiSquare = 0;
        for (int tenth : tenths) {
            chiSquare += Math.pow(tenth - draws / 10.0, 2) / (draws / 10.0);
        }
        // 99.9 % of chi-square with 9 degrees of freedom
        assertThat(chiSquare).isLessThan(27.88);
    }

    @Test
    void streamsOfOneSeedAreNotCorrelated() {
        NormalStream first = new NormalStream(1, 0);
        NormalStream second = new NormalStream(1, 1);
        double products = 0;
        for (int i = 0; i < 200_000; i++) {
            products += first.next() * second.next();
        }
        assertThat(products / 200_000).isCloseTo(0, within(4 / Math.sqrt(200_000)));
    }
}
