package org.coursewright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How lengths are written; units are 127 to 1/64 in, 508 to 1/16 in, 8128 to an inch, 97536 to a foot. */
class LengthWritingTest {

    private static final long TEN_KILOMETRES = 3_200_000_000L;

    @ParameterizedTest(name = "[{index}] {0} units")
    @CsvSource(delimiter = '|', quoteCharacter = '\u0001', textBlock = """
            1207008  | 12'-4 1/2"
            1170432  | 12'-0"
            1174496  | 12'-0 1/2"
            97536    | 1'-0"
            97535    | 1'-0"
            97281    | 11 15/16"
            97282    | 1'-0"
            36576    | 4 1/2"
            4064     | 1/2"
            508      | 1/16"
            254      | 1/16"
            253      | 0"
            0        | 0"
            -253     | 0"
            -254     | -1/16"
            -24384   | -3"
            -1207008 | -12'-4 1/2"
            """)
    void feetAndInchesGoToTheNearestSixteenth(long units, String written) {
        assertThat(LengthFormat.INCHES.format(Length.ofUnits(units))).isEqualTo(written);
    }

    @ParameterizedTest(name = "[{index}] {0} units")
    @CsvSource(delimiter = '|', textBlock = """
            1203200  | 3760 mm
            1202944  | 3759.2 mm
            16       | 0.1 mm
            15       | 0 mm
            -15      | 0 mm
            -16      | -0.1 mm
            -320     | -1 mm
            3200000  | 10000 mm
            """)
    void millimetresGoToTheNearestTenth(long units, String written) {
        assertThat(LengthFormat.MILLIMETRES.format(Length.ofUnits(units))).isEqualTo(written);
    }

    @ParameterizedTest(name = "[{index}] {0} units")
    @CsvSource(delimiter = '|', quoteCharacter = '\u0001', textBlock = """
            36703  | 4 33/64" | 114.696875 mm
            36704  | 114.7 mm | 114.7 mm
            1      | 0.003125 mm | 0.003125 mm
            -127   | -1/64"   | -0.396875 mm
            """)
    void exactWritingNeverRounds(long units, String inches, String millimetres) {
        assertThat(LengthFormat.INCHES.formatExact(Length.ofUnits(units))).isEqualTo(inches);
        assertThat(LengthFormat.MILLIMETRES.formatExact(Length.ofUnits(units))).isEqualTo(millimetres);
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 4, 8, 16, 32, 64})
    void whatIsOnTheRuleIsReadBackAsItWas(int denominator) {
        LengthFormat format = new LengthFormat(DisplayUnit.INCH, denominator);
        Random random = new Random(denominator);
        long step = Length.UNITS_PER_INCH / denominator;
        for (int i = 0; i < 5_000; i++) {
            Length length = Length.ofUnits(random.nextLong(-TEN_KILOMETRES / step, TEN_KILOMETRES / step + 1) * step);
            assertThat(format.parse(format.format(length))).isEqualTo(length);
        }
    }

    @ParameterizedTest
    @EnumSource(DisplayUnit.class)
    void roundedWritingIsOffByHalfAStepAtMostAndExactWritingNotAtAll(DisplayUnit unit) {
        LengthFormat format = LengthFormat.of(unit);
        long halfStep = unit == DisplayUnit.INCH ? 254 : 16;
        Random random = new Random(320);
        for (int i = 0; i < 20_000; i++) {
            Length length = Length.ofUnits(random.nextLong(-10_000_000, 10_000_000));
            Length readBack = format.parse(format.format(length));
            assertThat(readBack.minus(length).abs().units()).isLessThanOrEqualTo(halfStep);
            assertThat(format.parse(format.formatExact(length))).isEqualTo(length);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {Long.MIN_VALUE, Long.MAX_VALUE})
    void theLongestLengthsAreWritten(long units) {
        String sign = units < 0 ? "-" : "";
        assertThat(LengthFormat.MILLIMETRES.format(Length.ofUnits(units))).isEqualTo(sign + "28823037615171174.4 mm");
        assertThat(LengthFormat.INCHES.format(Length.ofUnits(units))).startsWith(sign + "94563").endsWith("\"");
        assertThat(LengthFormat.MILLIMETRES.formatExact(Length.ofUnits(units)))
                .isEqualTo(Length.ofUnits(units).toString());
    }

    @Test
    void aFormatFollowsItsDisplayUnit() {
        assertThat(LengthFormat.of(DisplayUnit.INCH)).isEqualTo(LengthFormat.INCHES);
        assertThat(LengthFormat.of(DisplayUnit.MILLIMETRE)).isEqualTo(LengthFormat.MILLIMETRES);
    }

    @ParameterizedTest
    @ValueSource(ints = {-2, 0, 1, 3, 10, 128})
    void denominatorsThatNoRuleHasAreRefused(int denominator) {
        assertThatThrownBy(() -> new LengthFormat(DisplayUnit.INCH, denominator))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("The denominator (%d) must be 2, 4, 8, 16, 32 or 64.", denominator);
    }
}
