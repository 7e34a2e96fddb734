package org.coursewright.measure;

import java.util.Objects;

/**
 * Reads and writes lengths as people do: {@code 12'-4 1/2"}, {@code 4 1/2}, {@code 3760 mm}, {@code 3.76 m}.
 *
 * @param unit what a bare number means and which unit is written, not null
 * @param inchDenominator finest fraction of an inch that is written: 2, 4, 8, 16, 32 or 64
 */
public record LengthFormat(DisplayUnit unit, int inchDenominator) {

    /** Feet, inches and sixteenths. */
    public static final LengthFormat INCHES = new LengthFormat(DisplayUnit.INCH, 16);

    /** Millimetres. */
    public static final LengthFormat MILLIMETRES = new LengthFormat(DisplayUnit.MILLIMETRE, 16);

    public LengthFormat {
        Objects.requireNonNull(unit, "unit");
        if (Integer.bitCount(inchDenominator) != 1 || inchDenominator < 2 || inchDenominator > 64) {
            throw new IllegalArgumentException(
                    "The denominator (%d) must be 2, 4, 8, 16, 32 or 64.".formatted(inchDenominator));
        }
    }
}
