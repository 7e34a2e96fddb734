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

    /** Compares the exact quotients. */
    @Override
    public int compareTo(LengthRatio other) {
        return Long.compare(Math.multiplyExact(total.units(), other.count),
                Math.multiplyExact(other.total.units(), count));
    }

    /** @return whether the quotient is at least {@code least} and at most {@code most}, exactly */
    public boolean isWithin(Length least, Length most) {
        return total.compareTo(least.times(count)) >= 0 && total.compareTo(most.times(count)) <= 0;
    }
}
