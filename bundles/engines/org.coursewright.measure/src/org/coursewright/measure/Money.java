package org.coursewright.measure;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.Objects;

/**
 * An exact amount of one currency.
 *
 * @param amount the amount in major units (dollars, not cents), any scale, not null
 * @param currency the ISO 4217 currency, not null
 */
public record Money(BigDecimal amount, Currency currency) {

    public Money {
        Objects.requireNonNull(amount, "amount");
        Objects.requireNonNull(currency, "currency");
    }

    /**
     * Reads the form written by {@link #toString()}: amount and ISO 4217 code, such as {@code 1.25 USD}.
     *
     * @param text the stored form, not null
     * @return that amount
     * @throws IllegalArgumentException if the text is not of that form or the code is unknown
     */
    public static Money fromStored(String text) {
        String[] parts = text.strip().split("\\s+");
        if (parts.length == 2 && parts[0].length() <= 40) {
            try {
                return new Money(new BigDecimal(parts[0]), Currency.getInstance(parts[1]));
            } catch (IllegalArgumentException e) {
                throw new IllegalArgumentException(notMoney(text), e);
            }
        }
        throw new IllegalArgumentException(notMoney(text));
    }

    private static String notMoney(String text) {
        return "\"%s\" is not an amount of money with its ISO 4217 code, such as 1.25 USD."
                .formatted(text.length() <= 60 ? text : text.substring(0, 60));
    }

    /** @return the stored form, such as {@code 1.25 USD} */
    @Override
    public String toString() {
        return amount.toPlainString() + " " + currency.getCurrencyCode();
    }
}
