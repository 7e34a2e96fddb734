package org.coursewright.exchange.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import org.coursewright.core.bond.JointRange;
import org.coursewright.measure.DisplayUnit;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RuleChoiceTest {

    @Test
    void ruleIsReadWithAndWithoutUnits() throws Exception {
        RuleChoice rule = RuleChoice.parse("lap=3.5 in, head=3/8 in:1/2:3/4 in,BED=8 mm:10 mm:15 mm,shortest=4",
                LengthFormat.INCHES);
        assertThat(rule.lap()).contains(Length.ofInchFraction(7, 2));
        assertThat(rule.head()).isEqualTo(
                new JointRange(Length.ofInchFraction(3, 8), Length.ofInchFraction(1, 2), Length.ofInchFraction(3, 4)));
        assertThat(rule.bed().most()).isEqualTo(Length.ofMillimetres(15));
        assertThat(rule.shortest()).contains(Length.ofInches(4));
    }

    @Test
    void whatIsLeftOutIsAsUsual() throws Exception {
        RuleChoice rule = RuleChoice.parse("lap=70", LengthFormat.MILLIMETRES);
        RuleChoice usual = RuleChoice.usual(DisplayUnit.MILLIMETRE);
        assertThat(rule.head()).isEqualTo(usual.head());
        assertThat(rule.shortest()).isEmpty();
        assertThat(usual.lap()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            lap                    | 1  | "lap" lacks its equals sign
            lap=3,,bed=1:2:3       | 7  | "" lacks its equals sign
            lap=3, gap=2           | 8  | "gap" is unknown. Known are lap, head, bed, shortest.
            lap=3,lap=4            | 7  | lap is given twice
            head=1/2               | 6  | head needs three lengths
            head=3/8: x :3/4       | 11 | "x" is not a length
            head=3/4:1/2:3/8       | 6  | The lengths of head must not fall
            bed=1/2:1/2:9          | 13 | "9" is out of range: enter 0 to 100 mm
            lap=-1                 | 5  | "-1" is out of range
            shortest=              | 10 | "" is not a length
            """)
    void faultIsToldWithItsPosition(String text, int position, String message) {
        assertThatExceptionOfType(RuleTextException.class)
                .isThrownBy(() -> RuleChoice.parse(text, LengthFormat.INCHES))
                .satisfies(e -> assertThat(e.position()).isEqualTo(position))
                .withMessageStartingWith("Character %d: %s".formatted(position, message));
    }
}
