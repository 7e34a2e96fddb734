package org.coursewright.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What people type and what it means; expected values are worked by hand from 1 in = 25.4 mm, 1 ft = 12 in. */
class LengthReadingTest {

    @ParameterizedTest(name = "[{index}] {0}")
    @CsvSource(delimiter = '|', quoteCharacter = '\u0001', textBlock = """
            12'-4 1/2"           | 3771.9
            12' 4-1/2"           | 3771.9
            12'4.5"              | 3771.9
            12 ft 4 1/2 in       | 3771.9
            12ft4.5in            | 3771.9
            12 feet 4 1/2 inches | 3771.9
            12 FT. 4 1/2 IN.     | 3771.9
            12' - 4 1/2"         | 3771.9
            12'-4 1/2            | 3771.9
            12' 4 1/2            | 3771.9
            12\u2032 4\u00bd\u2033  | 3771.9
            12\u2019-4\u00a01/2\u201d | 3771.9
            12\u2032\u20114\u2013\u00bd\u2033 | 3771.9
            12'-4 1\u20442''     | 3771.9
            +12'-4 1/2"          | 3771.9
            -12'-4 1/2"          | -3771.9
            12'                  | 3657.6
            12'-0"               | 3657.6
            2 1/2 ft             | 762
            2.5'                 | 762
            1/2 foot             | 152.4
            4 1/2                | 114.3
            4-1/2"               | 114.3
            4\u00bd              | 114.3
            4.5                  | 114.3
            4.50 in              | 114.3
            148 1/2"             | 3771.9
            29/2                 | 368.3
            1/2                  | 12.7
            .5                   | 12.7
            \u00bd               | 12.7
            \u00bc"              | 6.35
            \u00be               | 19.05
            \u215b               | 3.175
            \u215c               | 9.525
            \u215d               | 15.875
            \u215e               | 22.225
            3 / 8                | 9.525
            1/64                 | 0.396875
            63/64"               | 25.003125
            -3"                  | -76.2
            \u22123"             | -76.2
            - 3"                 | -76.2
            0                    | 0
            -0"                  | 0
            1                    | 25.4
            3760 mm              | 3760
            3760mm               | 3760
            3760 MM              | 3760
            376 cm               | 3760
            3.76 m               | 3760
            3.76\u202fm          | 3760
            0.1 mm               | 0.1
            3759.2 mm            | 3759.2
            -25 mm               | -25
            10000 m              | 10000000
            """)
    void whatIsTypedWhereInchesAreShown(String typed, BigDecimal millimetres) {
        assertThat(LengthFormat.INCHES.parse(typed)).isEqualTo(Length.ofMillimetresExact(millimetres));
    }

    @ParameterizedTest(name = "[{index}] {0}")
    @CsvSource(delimiter = '|', quoteCharacter = '\u0001', textBlock = """
            3760        | 3760
            3759.2      | 3759.2
            -12.5       | -12.5
            4 1/2"      | 114.3
            12' 4       | 3759.2
            12'-4 1/2   | 3771.9
            2 in        | 50.8
            1/2 in      | 12.7
            3.76 m      | 3760
            """)
    void whatIsTypedWhereMillimetresAreShown(String typed, BigDecimal millimetres) {
        assertThat(LengthFormat.MILLIMETRES.parse(typed)).isEqualTo(Length.ofMillimetresExact(millimetres));
    }

    /** 1/320 mm is 0.003125 mm, so its half is 0.0015625 mm; 0.001 in is 8.128 units. */
    @ParameterizedTest(name = "[{index}] {0}")
    @CsvSource(delimiter = '|', textBlock = """
            0.001 in         | 8
            0.0005 in        | 4
            0.0015625 mm     | 1
            0.0015624 mm     | 0
            -0.0015625 mm    | -1
            0.0046875 mm     | 2
            0.3333 in        | 2709
            1.2345 mm        | 395
            """)
    void decimalsFinerThanTheUnitGoToTheNearest(String typed, long units) {
        assertThat(LengthFormat.INCHES.parse(typed).units()).isEqualTo(units);
    }
}
