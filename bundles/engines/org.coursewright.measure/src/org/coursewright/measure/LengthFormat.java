package org.coursewright.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;

/**
 * Reads and writes lengths as people do: {@code 12'-4 1/2"}, {@code 4 1/2}, {@code 3760 mm}, {@code 3.76 m}.
 *
 * <p>What is typed with a unit is taken in that unit; a bare number is taken in {@link #unit()}. What is typed exactly
 * is read exactly: every fraction down to 1/64 in and every tenth of a millimetre is a whole number of units of 1/320
 * mm. A decimal finer than that (0.001 in, 1.2345 mm) becomes the nearest whole number of units, a half away from zero,
 * so it is never off by more than 1/640 mm.
 *
 * @param unit what a bare number means and which unit is written, not null
 * @param inchDenominator finest fraction of an inch that is written: 2, 4, 8, 16, 32 or 64
 */
public record LengthFormat(DisplayUnit unit, int inchDenominator) {

    /** Feet, inches and sixteenths. */
    public static final LengthFormat INCHES = new LengthFormat(DisplayUnit.INCH, 16);

    /** Millimetres. */
    public static final LengthFormat MILLIMETRES = new LengthFormat(DisplayUnit.MILLIMETRE, 16);

    private static final int FINEST_DENOMINATOR = 64;

    public LengthFormat {
        Objects.requireNonNull(unit, "unit");
        if (Integer.bitCount(inchDenominator) != 1 || inchDenominator < 2 || inchDenominator > FINEST_DENOMINATOR) {
            throw new IllegalArgumentException(
                    "The denominator (%d) must be 2, 4, 8, 16, 32 or 64.".formatted(inchDenominator));
        }
    }

    /**
     * The usual format for a display unit: sixteenths of an inch, or tenths of a millimetre.
     *
     * @param unit what a bare number means and which unit is written, not null
     * @return {@link #INCHES} or {@link #MILLIMETRES}
     */
    public static LengthFormat of(DisplayUnit unit) {
        return unit == DisplayUnit.INCH ? INCHES : MILLIMETRES;
    }

    /**
     * Reads a length.
     *
     * <ul>
     * <li>Units: {@code mm}, {@code cm}, {@code m}, {@code in}, {@code inch}, {@code inches}, {@code "}, {@code ft},
     * {@code foot}, {@code feet}, {@code '}, in capitals or small letters, with or without a space before them;
     * typographic primes and quotes are marks too.
     * <li>Feet may be followed by inches below 12, with or without a dash and with or without their mark:
     * {@code 12'-4 1/2"}, {@code 12 ft 4.5 in}, {@code 12' 4}.
     * <li>Fractions, of inches and feet only, have a denominator of 2, 4, 8, 16, 32 or 64: {@code 4 1/2}, {@code 4-1/2},
     * {@code 4½}, {@code 29/2}.
     * <li>Decimals have a point. A comma is refused, because it divides thousands in one country and decimals in the
     * next.
     * </ul>
     *
     * @param text what was typed, at most 40 characters, not null
     * @return that length, from -10 km to 10 km, rounded to the nearest 1/320 mm if it is finer than that
     * @throws LengthFormatException if the text is no length; the reason says what would be right
     */
    public Length parse(String text) {
        return new LengthReader(text, unit).read();
    }

    /**
     * Writes a length for people, rounded to what the format shows, a half away from zero.
     *
     * @param length any length, not null
     * @return feet, inches and a reduced fraction ({@code 12'-4 1/2"}, {@code 4 1/2"} below a foot), or millimetres with
     *         at most one decimal ({@code 3759.2 mm}); {@link #parse} reads it back
     */
    public String format(Length length) {
        return unit == DisplayUnit.INCH
                ? FeetAndInches.nearest(length, inchDenominator).toString()
                : nearestTenth(length);
    }

    /**
     * Writes a length without rounding it.
     *
     * @param length any length, not null
     * @return feet, inches and a fraction down to 1/64 in where that is exact; otherwise, and in a format of
     *         millimetres, as many decimals of a millimetre as it takes, which is at most six
     */
    public String formatExact(Length length) {
        FeetAndInches nearest = FeetAndInches.nearest(length, FINEST_DENOMINATOR);
        return unit == DisplayUnit.INCH && nearest.isExactly(length) ? nearest.toString() : length.toString();
    }

    private static String nearestTenth(Length length) {
        BigDecimal tenths = length.toMillimetres().setScale(1, RoundingMode.HALF_UP);
        return tenths.stripTrailingZeros().toPlainString() + " mm";
    }
}
