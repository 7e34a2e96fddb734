package org.coursewright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.util.Random;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Whatever is typed, it is read or refused; nothing else happens. */
class LengthFuzzTest {

    private static final String[] SCRAPS = {"1", "12", "0", "4.5", ".", "/", "1/2", "1/0", "-", "\u2212", "+", "'",
            "\"",
            "''", " ", "\u00a0", "mm", "m", "cm", "in", "ft", "in.", ",", "\u00bd", "\u2154", "e9", "NaN", "\u0000",
            "\u0661", "\ud83e\uddf1", "\ud83e", "%s", "\\", "999999999999"};

    @ParameterizedTest
    @EnumSource(DisplayUnit.class)
    void textPutTogetherOfScrapsIsReadOrRefused(DisplayUnit unit) {
        LengthFormat format = LengthFormat.of(unit);
        Random random = new Random(20);
        int read = 0;
        for (int i = 0; i < 20_000; i++) {
            StringBuilder text = new StringBuilder();
            random.ints(random.nextInt(1, 6), 0, SCRAPS.length).forEach(scrap -> text.append(SCRAPS[scrap]));
            read += isReadBack(format, text.toString()) ? 1 : 0;
        }
        assertThat(read).as("texts that happened to be lengths").isBetween(500, 10_000);
    }

    @Test
    void everySingleCharacterIsReadOrRefused() {
        for (int c = 0; c <= Character.MAX_VALUE; c++) {
            boolean digit = c >= '0' && c <= '9' || "\u00bc\u00bd\u00be\u215b\u215c\u215d\u215e".indexOf(c) >= 0;
            if (isReadBack(LengthFormat.INCHES, String.valueOf((char) c)) != digit) {
                fail("U+%04X is read although it is no digit, or refused although it is one.", c);
            }
        }
    }

    private static boolean isReadBack(LengthFormat format, String text) {
        try {
            Length length = format.parse(text);
            assertThat(format.parse(format.formatExact(length))).as(text).isEqualTo(length);
            return true;
        } catch (LengthFormatException e) {
            assertThat(e.reason()).isNotEmpty();
            return false;
        }
    }
}
