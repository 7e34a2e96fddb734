package org.coursewright.takeoff;

import java.util.Objects;

import org.coursewright.measure.Quantity;

/**
 * A line of a take-off: so much of something, and how that came about.
 *
 * @param item what it is an amount of, such as {@code mortar.bed} or a material's name
 * @param quantity how much, decimals rounded as {@link Fraction#toDecimal()} does
 * @param trace how it came about
 */
public record Figure(String item, Quantity quantity, Trace trace) {

    public Figure {
        Objects.requireNonNull(item, "item");
        Objects.requireNonNull(quantity, "quantity");
        Objects.requireNonNull(trace, "trace");
    }
}
