package org.coursewright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LengthTest {

    private static final Length LONGEST = Length.ofUnits(Long.MAX_VALUE);
    private static final Length UNIT = Length.ofUnits(1);

    /** Outside check: 1 in = 25.4 mm exactly (international yard and pound agreement of 1959; ISO 80000-3). */
    @Test
    void anInchIsExactlyTwentyFivePointFourMillimetres() {
        assertThat(Length.ofInches(1)).isEqualTo(Length.ofMillimetresExact(new BigDecimal("25.4")));
        assertThat(Length.ofInches(5)).isEqualTo(Length.ofMillimetres(127));
    }

    /** Outside check: 1 yd = 0.9144 m and 1 ft = 0.3048 m exactly (same agreement). */
    @Test
    void aYardAndAFootAreTheirPublishedMetres() {
        assertThat(LengthFormat.INCHES.parse("3 ft")).isEqualTo(LengthFormat.INCHES.parse("0.9144 m"));
        assertThat(LengthFormat.INCHES.parse("1 ft")).isEqualTo(LengthFormat.INCHES.parse("0.3048 m"));
    }

    @Test
    void everySixtyFourthOfAnInchAndTenthOfAMillimetreIsWhole() {
        assertThat(Length.ofInchFraction(1, 64).units()).isEqualTo(127);
        assertThat(Length.ofMillimetresExact(new BigDecimal("0.1")).units()).isEqualTo(32);
    }

    @Test
    void finerFractionsAreRefused() {
        assertThatThrownBy(() -> Length.ofInchFraction(1, 128)).isInstanceOf(ArithmeticException.class)
                .hasMessage("1/128 in is not a whole number of 1/320 mm.");
        assertThatThrownBy(() -> Length.ofMillimetresExact(new BigDecimal("0.01")))
                .isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> Length.ofInchFraction(1, 0)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void arithmeticThatDoesNotFitThrowsRatherThanOverflows() {
        assertThatThrownBy(() -> LONGEST.plus(UNIT)).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> LONGEST.negated().minus(UNIT).minus(UNIT)).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> LONGEST.times(2)).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> Length.ofUnits(Long.MIN_VALUE).negated()).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> Length.ofUnits(Long.MIN_VALUE).abs()).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> Length.ofMillimetres(Long.MAX_VALUE)).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> Length.ofInches(Long.MAX_VALUE)).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> Length.ofInchFraction(Long.MAX_VALUE, 2)).isInstanceOf(ArithmeticException.class);
        assertThatThrownBy(() -> Length.ofMillimetresExact(new BigDecimal("1e30")))
                .isInstanceOf(ArithmeticException.class);
    }

    @Test
    void theStoredFormIsReadBackAsItWas() {
        Random random = new Random(8128);
        for (int i = 0; i < 20_000; i++) {
            Length length = Length.ofUnits(random.nextLong());
            assertThat(Length.fromStored(length.toString())).isEqualTo(length);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "3759.2", "3759.2 in", "mm", "0.01 mm", "1e30 mm", "1e-999999999 mm", "NaN mm"})
    void whatIsNotTheStoredFormIsRefused(String text) {
        assertThatThrownBy(() -> Length.fromStored(text)).isInstanceOf(LengthFormatException.class)
                .hasMessageContaining("such as 3759.2 mm");
    }

    @Test
    void lengthsAreOrderedByTheirSize() {
        assertThat(Length.ofInches(1)).isGreaterThan(Length.ofMillimetres(25)).isLessThan(Length.ofMillimetres(26));
        assertThat(Length.ofInches(1).isGreaterThan(Length.ofMillimetres(25))).isTrue();
        assertThat(Length.ofInches(-1).isLessThan(Length.ZERO)).isTrue();
        assertThat(Length.ofInches(-1).signum()).isEqualTo(-1);
    }
}
