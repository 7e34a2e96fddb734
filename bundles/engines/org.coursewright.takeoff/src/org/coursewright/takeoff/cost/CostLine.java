package org.coursewright.takeoff.cost;

import java.util.Objects;

import org.coursewright.measure.Quantity;
import org.coursewright.takeoff.Trace;

/**
 * So much of a resource for some element.
 *
 * @param id names the line in messages, unique in its scenario
 * @param resource what is priced
 * @param quantity how much
 * @param element code of the element it is for, such as {@code B2010}
 * @param trade that does the work or buys
 * @param trace how the quantity came about
 */
public record CostLine(String id, String resource, Quantity quantity, String element, String trade, Trace trace) {

    public CostLine {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(resource, "resource");
        Objects.requireNonNull(quantity, "quantity");
        Objects.requireNonNull(element, "element");
        Objects.requireNonNull(trade, "trade");
        Objects.requireNonNull(trace, "trace");
    }
}
