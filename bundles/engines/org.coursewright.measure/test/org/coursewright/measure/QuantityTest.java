package org.coursewright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTest {

    @Test
    void sumsDifferencesAndProductsAreExact() {
        Quantity mortar = Quantity.of(new BigDecimal("0.1"), UnitCode.CUBIC_METRE);
        assertThat(mortar.plus(Quantity.fromStored("0.2 MTQ"))).hasToString("0.3 MTQ");
        assertThat(mortar.minus(Quantity.fromStored("0.3 MTQ"))).hasToString("-0.2 MTQ");
        assertThat(mortar.times(new BigDecimal("1.15"))).hasToString("0.115 MTQ");
    }

    @Test
    void differentUnitsAreNotAdded() {
        Quantity cubicMetres = Quantity.fromStored("3.5 MTQ");
        Quantity cubicYards = Quantity.fromStored("2 YDQ");
        assertThatThrownBy(() -> cubicMetres.plus(cubicYards)).isInstanceOf(IllegalArgumentException.class)
                .hasMessage("3.5 MTQ and 2 YDQ are in different units; convert one of them first.");
        assertThatThrownBy(() -> cubicMetres.minus(cubicYards)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aCodeThatWeDoNotUseIsKeptButHasNoUnit() {
        assertThat(Quantity.fromStored("7 4L").unit()).isEmpty();
        assertThat(Quantity.fromStored("7 4L")).hasToString("7 4L");
        assertThat(Quantity.fromStored("7 H87").unit()).contains(UnitCode.PIECE);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "3.5", "MTQ", "3,5 MTQ", "1e999999999 MTQ", "3.5 MTQ x"})
    void whatIsNotTheStoredFormIsRefused(String text) {
        assertThatThrownBy(() -> Quantity.fromStored(text)).isInstanceOf(IllegalArgumentException.class)
                .hasMessage("\"%s\" is not a quantity with its unit code, such as 3.5 MTQ.", text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"mtq", "M", "MTQX", "M3!"})
    void codesOfAnotherFormAreRefused(String code) {
        assertThatThrownBy(() -> new Quantity(BigDecimal.ONE, code)).isInstanceOf(IllegalArgumentException.class)
                .hasMessage("\"%s\" is not a UN/ECE Recommendation 20 code, such as MTQ for cubic metre.", code);
    }
}
