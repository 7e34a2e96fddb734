package org.coursewright.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Random;

import org.junit.jupiter.api.Test;

class FractionTest {

    @Test
    void fractionsAreKeptInLowestTermsWithPositiveDenominator() {
        assertThat(Fraction.of(6, -8)).isEqualTo(Fraction.of(-3, 4)).hasToString("-3/4");
        assertThat(Fraction.of(0, -5)).isEqualTo(Fraction.ZERO);
        assertThat(Fraction.of("0.15")).isEqualTo(Fraction.of(3, 20));
        assertThat(Fraction.of("2E+3")).isEqualTo(Fraction.of(2000));
    }

    @Test
    void floorAndCeilingOfNegativesGoTheRightWay() {
        assertThat(Fraction.of(-7, 2).floor()).isEqualTo(-4);
        assertThat(Fraction.of(-7, 2).ceiling()).isEqualTo(-3);
        assertThat(Fraction.of(7, 2).floor()).isEqualTo(3);
        assertThat(Fraction.of(7, 2).ceiling()).isEqualTo(4);
        assertThat(Fraction.of(-4).floor()).isEqualTo(-4);
        assertThat(Fraction.of(-4).ceiling()).isEqualTo(-4);
    }

    @Test
    void decimalsAreRoundedHalfEvenAndStripped() {
        assertThat(Fraction.of(1, 3).toDecimal()).isEqualByComparingTo("0.333333333333");
        assertThat(Fraction.of(5, 2).toDecimal()).hasToString("2.5");
        assertThat(Fraction.of(1200).toDecimal()).hasToString("1200");
    }

    @Test
    void divisionByZeroIsRefused() {
        assertThatThrownBy(() -> Fraction.ONE.dividedBy(Fraction.ZERO)).isInstanceOf(ArithmeticException.class);
    }

    @Test
    void arithmeticKeepsTheLawsOfAField() {
        Random random = new Random(11);
        for (int i = 0; i < 500; i++) {
            Fraction a = Fraction.of(random.nextInt(200) - 100, 1 + random.nextInt(30));
            Fraction b = Fraction.of(random.nextInt(200) - 100, 1 + random.nextInt(30));
            Fraction c = Fraction.of(1 + random.nextInt(100), 1 + random.nextInt(30));
            assertThat(a.plus(b).minus(b)).isEqualTo(a);
            assertThat(a.plus(b).times(c)).isEqualTo(a.times(c).plus(b.times(c)));
            assertThat(a.times(c).dividedBy(c)).isEqualTo(a);
            assertThat(a.compareTo(b)).isEqualTo(a.minus(b).signum());
        }
    }
}
