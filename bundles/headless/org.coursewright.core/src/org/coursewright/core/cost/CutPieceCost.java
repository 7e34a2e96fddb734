package org.coursewright.core.cost;

import java.math.BigDecimal;
import java.util.Objects;

import org.coursewright.measure.Money;

/**
 * What one cut piece costs: its part of a unit, and the work of cutting it.
 *
 * @param cost direct cost
 * @param units part of a whole unit that it takes with its kerf, more than 0 and at most 1
 * @param minutes that people work on it, zero or more
 */
public record CutPieceCost(Money cost, BigDecimal units, BigDecimal minutes) {

    public CutPieceCost {
        Objects.requireNonNull(cost, "cost");
        Objects.requireNonNull(units, "units");
        Objects.requireNonNull(minutes, "minutes");
    }
}
