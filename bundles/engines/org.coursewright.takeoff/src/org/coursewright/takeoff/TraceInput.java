package org.coursewright.takeoff;

import java.util.Objects;

import org.coursewright.measure.Length;
import org.coursewright.measure.Quantity;
import org.coursewright.measure.UnitCode;

/**
 * A number that went into a formula.
 *
 * @param symbol what the formula calls it
 * @param value its value; a number without dimension has the unit {@code C62}
 */
public record TraceInput(String symbol, Quantity value) {

    public TraceInput {
        Objects.requireNonNull(symbol, "symbol");
        Objects.requireNonNull(value, "value");
    }

    /** @return a length in millimetres */
    public static TraceInput of(String symbol, Length length) {
        return new TraceInput(symbol, Quantity.of(length.toMillimetres(), UnitCode.MILLIMETRE));
    }

    /** @return a number without dimension */
    public static TraceInput of(String symbol, Fraction number) {
        return new TraceInput(symbol, Quantity.of(number.toDecimal(), UnitCode.ONE));
    }

    /** @return a count of pieces */
    public static TraceInput of(String symbol, long pieces) {
        return new TraceInput(symbol, Quantity.of(Fraction.of(pieces).toDecimal(), UnitCode.PIECE));
    }
}
