package org.coursewright.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.Objects;

/**
 * An exact amount of one currency. Sums and products are exact; only {@link #rounded()} rounds, so that a total is
 * rounded once, not in every line. Amounts that differ in trailing zeros are different records; compare
 * {@link #rounded()} amounts.
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
     * Nothing of a currency, to start a sum with.
     *
     * @param currency not null
     * @return zero
     */
    public static Money zero(Currency currency) {
        return new Money(BigDecimal.ZERO, currency);
    }

    /**
     * Reads the form written by {@link #toString()}: amount and ISO 4217 code, such as {@code 1.25 USD}.
     *
     * @param text the stored form, at most 60 characters, not null
     * @return that amount
     * @throws IllegalArgumentException if the text is not of that form or the code is unknown
     */
    public static Money fromStored(String text) {
        StoredDecimal stored = StoredDecimal.read(text).orElseThrow(() -> notMoney(text, null));
        try {
            return new Money(stored.value(), Currency.getInstance(stored.code()));
        } catch (IllegalArgumentException e) {
            throw notMoney(text, e);
        }
    }

    private static IllegalArgumentException notMoney(String text, Exception cause) {
        return new IllegalArgumentException("\"%s\" is not an amount of money with its ISO 4217 code, such as 1.25 USD."
                .formatted(StoredDecimal.shown(text)), cause);
    }

    /**
     * @param other an amount of the same currency
     * @return the exact sum
     * @throws IllegalArgumentException if the currencies differ
     */
    public Money plus(Money other) {
        return new Money(amount.add(inSameCurrency(other)), currency);
    }

    /**
     * @param other an amount of the same currency
     * @return the exact difference
     * @throws IllegalArgumentException if the currencies differ
     */
    public Money minus(Money other) {
        return new Money(amount.subtract(inSameCurrency(other)), currency);
    }

    /**
     * @param factor how many times, any sign, not null
     * @return the exact product: the price of {@code factor} pieces if this is the price of one
     */
    public Money times(BigDecimal factor) {
        return new Money(amount.multiply(factor), currency);
    }

    /**
     * Rounds to what can be paid: the minor unit that ISO 4217 gives the currency, two decimals for USD and none for
     * JPY, a half away from zero as on invoices (common practice, no source). A currency without a minor unit, such as
     * gold, is left as it is.
     *
     * @return the nearest amount with exactly that many decimals
     */
    public Money rounded() {
        int decimals = currency.getDefaultFractionDigits();
        return decimals < 0 ? this : new Money(amount.setScale(decimals, RoundingMode.HALF_UP), currency);
    }

    private BigDecimal inSameCurrency(Money other) {
        if (!currency.equals(other.currency)) {
            throw new IllegalArgumentException(
                    "%s and %s are different currencies; convert one of them first.".formatted(this, other));
        }
        return other.amount;
    }

    /** @return the stored form, such as {@code 1.25 USD} */
    @Override
    public String toString() {
        return amount.toPlainString() + " " + currency.getCurrencyCode();
    }
}
