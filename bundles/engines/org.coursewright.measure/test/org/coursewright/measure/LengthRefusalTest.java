package org.coursewright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What cannot be read is refused with what would be right. */
class LengthRefusalTest {

    @ParameterizedTest(name = "[{index}] {0}")
    @CsvSource(delimiter = '|', quoteCharacter = '\u0001', textBlock = """
            NaN            | a number is expected in the place of "NaN"
            Infinity       | a number is expected in the place of "Infinity"
            -              | a number is missing at its end
            12'-           | a number is missing at its end
            '              | a number is expected in the place of "'"
            1e9999         | "e" is not a unit of length; write mm, cm, m, in, ft, ' or "
            5 yd           | "yd" is not a unit of length
            3 \u00b5m      | "\u00b5m" is not a unit of length
            3,760 mm       | write 3760 without one, or 3.76 with a point
            3,76 m         | write 3760 without one, or 3.76 with a point
            1/0            | a denominator of 2, 4, 8, 16, 32 or 64, not 0
            1/3            | not 3; the nearest is 21/64
            \u2154         | not 3; the nearest is 43/64
            4 7/10"        | not 10; the nearest is 45/64
            5/1            | not 1; the nearest is 5
            1/128          | not 128; the nearest is 1/64
            1/1000         | not 1000; the nearest is 0
            12'-14"        | inches after feet are less than 12; write 13'-2"
            12'-12"        | inches after feet are less than 12; write 13'-0"
            12.5' 3"       | feet before inches are a whole number
            1/2' 3"        | feet before inches are a whole number
            12' 30 mm      | only inches follow feet
            12' 3'         | only inches follow feet
            4 3/2          | a fraction after a whole number is less than 1
            4.5 1/2        | a number has decimals or a fraction, not both
            4 - 1/2        | it could be a subtraction; write a whole number and a fraction as 4 1/2 or 4-1/2
            4 -1/2         | it could be a subtraction
            12-4 1/2       | "-" cannot stand there; write feet and inches as 12'-4 1/2"
            4 1            | two numbers follow each other
            3 760 mm       | two numbers follow each other
            3 m 20 cm      | two numbers follow each other
            1.2.3          | two numbers follow each other
            4" mm          | "mm" is a unit too many
            3"+2           | "+" cannot stand there
            1/2 mm         | a metric length has decimals and no fraction, such as 4.5 mm
            --3            | a number is expected in the place of "-"
            12'--3"        | a number is expected in the place of "-"
            1/2/4          | "/" cannot stand there
            #3             | "#" cannot stand there
            3 m\u00b2      | "\u00b2" cannot stand there
            \u0663         | "\u0663" cannot stand there
            \ud83e\uddf13  | "\ud83e\uddf1" cannot stand there
            10000.001 m    | it is more than 10 km, too long for a building
            -32809 ft      | it is more than 10 km, too long for a building
            99999999999999999999999999999999999999 m | it is more than 10 km, too long for a building
            1111111111111111111111111111111111111111 | it is more than 10 km, too long for a building
            11111111111111111111111111111111111111111 | it has 41 characters, and no length needs more than 40
            """)
    void whatIsNoLengthIsRefusedWithWhatWouldBeRight(String typed, String reason) {
        LengthFormatException refusal = refusal(typed);
        assertThat(refusal.reason()).contains(reason).doesNotEndWith(".");
        assertThat(refusal.text()).isEqualTo(typed);
        assertThat(refusal).hasMessageStartingWith("\"").hasMessageContaining("is not a length: " + refusal.reason());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "\u00a0\u00a0", "\t"})
    void nothingTypedIsRefused(String nothing) {
        assertThat(refusal(nothing).reason()).isEqualTo("it is empty; write a number, such as 4 1/2 in or 3760 mm");
    }

    @Test
    void controlCharactersAreRefusedAndShownAsOpenBoxes() {
        assertThat(refusal("3\u0000").reason()).startsWith("\"\u2423\" cannot stand there");
        assertThat(refusal("3\n4")).hasMessageStartingWith("\"3\u24234\" is not a length");
    }

    @Test
    void aBareFractionIsRefusedWhereMillimetresAreShown() {
        assertThatThrownBy(() -> LengthFormat.MILLIMETRES.parse("4 1/2")).isInstanceOf(LengthFormatException.class)
                .hasMessageContaining("a fraction without a unit could be inches; write 4 1/2 in");
    }

    @Test
    void aHugeTextIsRefusedAtOnceAndShownCut() {
        assertThat(refusal("9".repeat(10_000_000)).getMessage()).hasSizeLessThan(160);
    }

    private static LengthFormatException refusal(String typed) {
        return catchThrowableOfType(LengthFormatException.class, () -> LengthFormat.INCHES.parse(typed));
    }
}
