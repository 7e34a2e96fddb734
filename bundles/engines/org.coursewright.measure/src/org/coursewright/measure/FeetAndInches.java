package org.coursewright.measure;

/**
 * A length cut into feet, inches and a reduced fraction of an inch.
 *
 * @param negative whether it lies below zero
 * @param feet whole feet, at least 0
 * @param inches whole inches beyond the feet, 0 to 11
 * @param numerator parts of an inch beyond those, at least 0 and less than the denominator
 * @param denominator parts in an inch, odd numerator over a power of two, or 1
 */
record FeetAndInches(boolean negative, long feet, long inches, long numerator, long denominator) {

    private static final int INCHES_PER_FOOT = 12;

    /**
     * @param finest the parts in an inch to round to, a power of two up to 64
     * @return the nearest to a length, a half away from zero
     */
    static FeetAndInches nearest(Length length, int finest) {
        long step = Length.UNITS_PER_INCH / finest;
        long parts = Math.abs(length.units() / step) + (2 * Math.abs(length.units() % step) >= step ? 1 : 0);
        long wholeInches = parts / finest;
        long rest = parts % finest;
        long common = rest == 0 ? finest : Long.lowestOneBit(rest);
        return new FeetAndInches(length.signum() < 0 && parts > 0, wholeInches / INCHES_PER_FOOT,
                wholeInches % INCHES_PER_FOOT, rest / common, finest / common);
    }

    /** @return whether nothing was rounded away from {@code length} */
    boolean isExactly(Length length) {
        Length magnitude = Length.ofInches(feet * INCHES_PER_FOOT + inches)
                .plus(Length.ofInchFraction(numerator, denominator));
        return length.equals(negative ? magnitude.negated() : magnitude);
    }

    /** @return as drawings have it: {@code 12'-4 1/2"}, {@code 12'-0"}, {@code 4 1/2"}, {@code 1/2"}, {@code 0"} */
    @Override
    public String toString() {
        return (negative ? "-" : "") + (feet == 0 ? "" : feet + "'-") + inchText() + "\"";
    }

    private String inchText() {
        if (numerator == 0) {
            return Long.toString(inches);
        }
        String fraction = numerator + "/" + denominator;
        return feet == 0 && inches == 0 ? fraction : inches + " " + fraction;
    }
}
