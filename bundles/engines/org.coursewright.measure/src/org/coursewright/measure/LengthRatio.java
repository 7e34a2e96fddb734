package org.coursewright.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;

/**
 * A length divided by a count, kept as an exact fraction: the joint of a run whose joints are all equal.
 *
 * @param total the length that is divided, not null
 * @param count the number of equal parts, at least 1
 */
public record LengthRatio(Length total, int count) implements Comparable<LengthRatio> {

    public LengthRatio {
        Objects.requireNonNull(total, "total");
        if (count < 1) {
            throw new IllegalArgumentException("The count (%d) must be at least 1.".formatted(count));
        }
    }

    /** @return the quotient in millimetres (mm) with six decimals, half up, without trailing zeros */
    public BigDecimal toMillimetres() {
        BigDecimal rounded = BigDecimal.valueOf(total.units())
                .divide(BigDecimal.valueOf(Length.UNITS_PER_MILLIMETRE * count), 6, RoundingMode.HALF_UP)
                .stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
    }

    /**
     * Compares the exact quotients. Not consistent with {@link #equals}: 2 mm / 4 and 1 mm / 2 compare as 0 but are not
     * equal, because a run of four joints is not a run of two.
     */
    @Override
    public int compareTo(LengthRatio other) {
        return compareProducts(total.units(), other.count, other.total.units(), count);
    }

    /** @return whether the quotient is at least {@code least} and at most {@code most}, exactly */
    public boolean isWithin(Length least, Length most) {
        return compareProducts(total.units(), 1, least.units(), count) >= 0
                && compareProducts(total.units(), 1, most.units(), count) <= 0;
    }

    /** Compares a*b with c*d in 128 bits, so that nothing overflows. */
    private static int compareProducts(long a, long b, long c, long d) {
        int high = Long.compare(Math.multiplyHigh(a, b), Math.multiplyHigh(c, d));
        return high != 0 ? high : Long.compareUnsigned(a * b, c * d);
    }
}
