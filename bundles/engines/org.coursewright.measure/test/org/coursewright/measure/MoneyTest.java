package org.coursewright.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.Currency;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MoneyTest {

    @Test
    void sumsDifferencesAndProductsAreExact() {
        Money price = Money.fromStored("0.1 USD");
        assertThat(price.plus(Money.fromStored("0.2 USD"))).isEqualTo(Money.fromStored("0.3 USD"));
        assertThat(price.minus(Money.fromStored("0.3 USD"))).isEqualTo(Money.fromStored("-0.2 USD"));
        assertThat(price.times(new BigDecimal("1.05"))).isEqualTo(Money.fromStored("0.105 USD"));
        assertThat(Money.zero(Currency.getInstance("USD")).plus(price)).isEqualTo(price);
    }

    /** Outside check: ISO 4217 gives USD two decimals, JPY none and BHD three (from memory of its table A.1). */
    @ParameterizedTest
    @CsvSource({"1.005 USD, 1.01 USD", "-1.005 USD, -1.01 USD", "1.0049 USD, 1.00 USD", "2 USD, 2.00 USD",
            "100.5 JPY, 101 JPY", "1.2345 BHD, 1.235 BHD", "1.2345 XAU, 1.2345 XAU"})
    void roundingGoesToTheMinorUnitWithAHalfAwayFromZero(String exact, String rounded) {
        assertThat(Money.fromStored(exact).rounded()).hasToString(rounded);
    }

    /** Three lines of 0.335 are 1.005, so 1.01; rounded line by line they would be 1.02. */
    @Test
    void aTotalIsRoundedOnceNotLineByLine() {
        Money line = Money.fromStored("0.335 USD");
        assertThat(line.plus(line).plus(line).rounded()).hasToString("1.01 USD");
    }

    @Test
    void differentCurrenciesAreNotAdded() {
        Money dollars = Money.fromStored("1.25 USD");
        Money pesos = Money.fromStored("20 MXN");
        assertThatThrownBy(() -> dollars.plus(pesos)).isInstanceOf(IllegalArgumentException.class)
                .hasMessage("1.25 USD and 20 MXN are different currencies; convert one of them first.");
        assertThatThrownBy(() -> dollars.minus(pesos)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "1.25", "USD", "1.25 usd", "1.25 ZZZ", "1,25 USD", "1e999999999 USD", "1.25 USD x"})
    void whatIsNotTheStoredFormIsRefused(String text) {
        assertThatThrownBy(() -> Money.fromStored(text)).isInstanceOf(IllegalArgumentException.class)
                .hasMessage("\"%s\" is not an amount of money with its ISO 4217 code, such as 1.25 USD.", text);
    }
}
