package org.coursewright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Outside checks: codes of UN/ECE Recommendation 20 as in the unit code list published with OASIS UBL 2.1. */
class UnitCodeTest {

    private static final String[] PUBLISHED = ("MTR CMT MMT INH FOT YRD LF LM MTK FTK YDK MTQ DMQ FTQ YDQ LTR GLL KGM TNE"
            + " LBR STN H87 C62 EA MIL CEN SET HUR MIN DAY WEE MON KMQ 87 MPA CEL FAH P1 LS KWH BG BX RO PF")
            .split(" ");

    @Test
    void everyCodeIsAPublishedOneAndNoneIsMissing() {
        assertThat(Arrays.stream(UnitCode.values()).map(UnitCode::code)).containsExactlyInAnyOrder(PUBLISHED);
    }

    @ParameterizedTest
    @CsvSource({"MTQ, m\u00b3, cubic metre", "FTK, ft\u00b2, square foot", "INH, in, inch", "H87, pc, piece",
            "87, lb/ft\u00b3, pound per cubic foot", "STN, ton, US ton of 2000 lb", "CEL, \u00b0C, degree Celsius"})
    void aCodeHasItsSymbolAndName(String code, String symbol, String title) {
        assertThat(UnitCode.of(code).symbol()).isEqualTo(symbol);
        assertThat(UnitCode.of(code).title()).isEqualTo(title);
    }

    /** The list has status X, deleted, for names of packages, which have moved to Recommendation 21. */
    @Test
    void packagesAreWithdrawnAndNothingElseIs() {
        assertThat(Arrays.stream(UnitCode.values()).filter(UnitCode::isWithdrawn).map(UnitCode::code))
                .containsExactlyInAnyOrder("BG", "BX", "RO", "PF");
    }

    @ParameterizedTest
    @ValueSource(strings = {"PCE", "PSI", "PX", "mtq", ""})
    void codesThatAreNotInTheListAreRefused(String code) {
        assertThat(UnitCode.find(code)).isEmpty();
        assertThatThrownBy(() -> UnitCode.of(code)).isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("\"%s\" is not a UN/ECE Recommendation 20 code that is used here", code);
    }
}
