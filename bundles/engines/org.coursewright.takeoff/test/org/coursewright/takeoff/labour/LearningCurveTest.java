package org.coursewright.takeoff.labour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.labour.LearningCurve.Theory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LearningCurveTest {

    /** Coefficients of the 80 % and 90 % curves as in published tables, O114 (10 h × 0.512) and handbook. */
    @ParameterizedTest
    @CsvSource({"0.80, 1, 1", "0.80, 2, 0.8", "0.80, 4, 0.64", "0.80, 8, 0.512", "0.80, 10, 0.4765",
            "0.90, 10, 0.7047"})
    void singleRepetitionsAgreeWithTables(String rate, long number, double coefficient) {
        assertThat(curve(rate, Theory.UNIT, 1000).single(number)).isCloseTo(coefficient, within(5e-5));
    }

    /** Cumulative coefficients of ten repetitions, O116 and handbook. */
    @ParameterizedTest
    @CsvSource({"0.80, 6.315", "0.85, 7.116", "0.90, 7.994", "0.95, 8.955"})
    void totalsOfTenAgreeWithTables(String rate, double coefficient) {
        assertThat(curve(rate, Theory.UNIT, 1000).total(10)).isCloseTo(coefficient, within(1e-3));
    }

    /** Wright's average of the first eight at 80 % is 0.512, so all take 4.096 of the first. */
    @Test
    void cumulativeAverageFallsWithEveryDoubling() {
        LearningCurve wright = curve("0.8", Theory.CUMULATIVE_AVERAGE, 1000);
        assertThat(wright.total(8)).isCloseTo(4.096, within(1e-12));
        assertThat(wright.single(2)).isCloseTo(0.6, within(1e-12));
    }

    @Test
    void learningEndsAtThePlateau() {
        LearningCurve flat = curve("0.8", Theory.UNIT, 4);
        assertThat(flat.single(100)).isEqualTo(flat.single(4)).isCloseTo(0.64, within(1e-12));
        assertThat(flat.total(6)).isCloseTo(flat.total(4) + 2 * 0.64, within(1e-12));
    }

    @Test
    void repetitionThatIsOnlyBegunCountsByItsShare() {
        LearningCurve curve = curve("0.8", Theory.UNIT, 10);
        assertThat(curve.total(1.5)).isCloseTo(1.4, within(1e-12));
        assertThat(curve.averageFactor(Fraction.of(3, 2)).toDecimal().doubleValue()).isCloseTo(1.4 / 1.5, within(
                1e-9));
    }

    @Test
    void crewThatDoesNotLearnKeepsItsTime() {
        assertThat(curve("1", Theory.UNIT, 10).averageFactor(Fraction.of(25))).isEqualTo(Fraction.ONE);
        assertThat(curve("0.8", Theory.UNIT, 10).averageFactor(Fraction.ZERO)).isEqualTo(Fraction.ONE);
    }

    @Test
    void rateAboveOneIsRefused() {
        assertThatThrownBy(() -> curve("1.1", Theory.UNIT, 10)).hasMessageContaining("1.1");
    }

    private static LearningCurve curve(String rate, Theory theory, long plateau) {
        return new LearningCurve(Fraction.of(rate), theory, Fraction.ONE, plateau);
    }
}
