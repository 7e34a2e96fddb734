package org.coursewright.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;

/**
 * An exact length or position, counted in units of 1/320 mm.
 *
 * <p>The unit is the largest in which both 1/64 in (127 units) and 0.1 mm (32 units) are whole numbers, because an inch
 * is exactly 25.4 mm (international yard and pound agreement of 1959; ISO 80000-3) and so 8128 units. Lengths may be
 * negative: a position before an origin is one. All arithmetic is exact and throws {@link ArithmeticException} rather
 * than overflow.
 *
 * @param units the count of 1/320 mm, any {@code long}
 */
public record Length(long units) implements Comparable<Length> {

    /** Units in one millimetre. */
    public static final long UNITS_PER_MILLIMETRE = 320;

    /** Units in one inch of exactly 25.4 mm. */
    public static final long UNITS_PER_INCH = 8128;

    /** No length at all. */
    public static final Length ZERO = new Length(0);

    private static final BigDecimal UNITS_PER_MM_DECIMAL = BigDecimal.valueOf(UNITS_PER_MILLIMETRE);

    /**
     * A length of so many units.
     *
     * @param units the count of 1/320 mm
     * @return that length
     */
    public static Length ofUnits(long units) {
        return units == 0 ? ZERO : new Length(units);
    }

    /**
     * A length of whole millimetres.
     *
     * @param millimetres (mm)
     * @return that length
     * @throws ArithmeticException if it does not fit
     */
    public static Length ofMillimetres(long millimetres) {
        return ofUnits(Math.multiplyExact(millimetres, UNITS_PER_MILLIMETRE));
    }

    /**
     * A length of decimal millimetres that is a whole number of units, such as 3.175 mm.
     *
     * @param millimetres (mm), not null
     * @return exactly that length
     * @throws ArithmeticException if it is no whole number of 1/320 mm or does not fit
     */
    public static Length ofMillimetresExact(BigDecimal millimetres) {
        return ofUnits(millimetres.multiply(UNITS_PER_MM_DECIMAL).longValueExact());
    }

    /**
     * A length of whole inches.
     *
     * @param inches (in)
     * @return that length
     * @throws ArithmeticException if it does not fit
     */
    public static Length ofInches(long inches) {
        return ofUnits(Math.multiplyExact(inches, UNITS_PER_INCH));
    }

    /**
     * A length of a fraction of an inch, such as 9/16 in or 29/2 in.
     *
     * @param numerator count of parts, any sign
     * @param denominator parts in an inch, at least 1
     * @return exactly that length
     * @throws ArithmeticException if the fraction is no whole number of 1/320 mm (1/64 in is, 1/128 in is not)
     */
    public static Length ofInchFraction(long numerator, long denominator) {
        if (denominator < 1) {
            throw new IllegalArgumentException("The denominator (%d) must be at least 1.".formatted(denominator));
        }
        long scaled = Math.multiplyExact(numerator, UNITS_PER_INCH);
        if (scaled % denominator != 0) {
            throw new ArithmeticException(
                    "%d/%d in is not a whole number of 1/320 mm.".formatted(numerator, denominator));
        }
        return ofUnits(scaled / denominator);
    }

    /**
     * Reads the form written by {@link #toString()}: decimal millimetres with their unit, such as {@code 3759.2 mm}.
     *
     * @param text the stored form, not null
     * @return that length
     * @throws LengthFormatException if the text is not of that form or no whole number of 1/320 mm
     */
    public static Length fromStored(String text) {
        Objects.requireNonNull(text, "text");
        String trimmed = text.strip();
        if (trimmed.endsWith("mm") && trimmed.length() <= 40) {
            try {
                return ofMillimetresExact(new BigDecimal(trimmed.substring(0, trimmed.length() - 2).strip()));
            } catch (NumberFormatException | ArithmeticException e) {
                throw new LengthFormatException(text,
                        "a stored length is a whole number of 1/320 mm, such as 3759.2 mm", e);
            }
        }
        throw new LengthFormatException(text,
                "a stored length is decimal millimetres with the unit, such as 3759.2 mm");
    }

    /**
     * @param other what is added
     * @return the exact sum
     * @throws ArithmeticException if it does not fit
     */
    public Length plus(Length other) {
        return ofUnits(Math.addExact(units, other.units));
    }

    /**
     * @param other what is taken away
     * @return the exact difference, negative if {@code other} is longer
     * @throws ArithmeticException if it does not fit
     */
    public Length minus(Length other) {
        return ofUnits(Math.subtractExact(units, other.units));
    }

    /**
     * @param count how many times, any sign
     * @return the exact product
     * @throws ArithmeticException if it does not fit
     */
    public Length times(long count) {
        return ofUnits(Math.multiplyExact(units, count));
    }

    /**
     * @return as long the other way
     * @throws ArithmeticException if it does not fit, which only happens to the most negative length
     */
    public Length negated() {
        return ofUnits(Math.negateExact(units));
    }

    /**
     * @return as long, but not negative
     * @throws ArithmeticException if it does not fit, which only happens to the most negative length
     */
    public Length abs() {
        return units < 0 ? negated() : this;
    }

    /** @return -1, 0 or 1 as this length is negative, zero or positive */
    public int signum() {
        return Long.signum(units);
    }

    /** @return whether this is less than {@code other} */
    public boolean isLessThan(Length other) {
        return units < other.units;
    }

    /** @return whether this is greater than {@code other} */
    public boolean isGreaterThan(Length other) {
        return units > other.units;
    }

    /** @return the exact length in millimetres (mm), at most six decimals, without trailing zeros */
    public BigDecimal toMillimetres() {
        BigDecimal exact = BigDecimal.valueOf(units).divide(UNITS_PER_MM_DECIMAL, 6, RoundingMode.UNNECESSARY);
        BigDecimal stripped = exact.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }

    /** Orders lengths from the most negative up; consistent with {@link #equals}. */
    @Override
    public int compareTo(Length other) {
        return Long.compare(units, other.units);
    }

    /** @return the stored form, exact decimal millimetres with the unit, such as {@code 3759.2 mm} */
    @Override
    public String toString() {
        return toMillimetres().toPlainString() + " mm";
    }
}
