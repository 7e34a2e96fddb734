package org.coursewright.core.fit;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;

import org.coursewright.measure.Money;

/**
 * What one cut takes.
 *
 * @param minutes of labour, zero or more
 * @param cost of labour and wear, the block not counted, or empty if nobody said
 */
public record CutRate(BigDecimal minutes, Optional<Money> cost) {

    public CutRate {
        Objects.requireNonNull(minutes, "minutes");
        Objects.requireNonNull(cost, "cost");
        if (minutes.signum() < 0) {
            throw new IllegalArgumentException("A cut takes %s minutes: it cannot take less than none.".formatted(
                    minutes));
        }
    }
}
