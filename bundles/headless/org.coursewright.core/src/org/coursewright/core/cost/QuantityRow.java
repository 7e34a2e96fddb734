package org.coursewright.core.cost;

import java.util.Objects;
import java.util.Optional;

import org.coursewright.core.takeoff.TakeoffLine;

/**
 * A line in the table of everything that a building takes.
 *
 * @param item what it is: a line of the take-off, or the resource
 * @param kind what the line says of it, such as {@code laid whole}, or what the resource is for, such as {@code mortar}
 * @param element ASTM E1557 code of the element it is for; empty for lines of the whole building
 * @param line how much, and how that came about
 */
public record QuantityRow(String item, String kind, Optional<String> element, TakeoffLine line) {

    public QuantityRow {
        Objects.requireNonNull(item, "item");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(element, "element");
        Objects.requireNonNull(line, "line");
    }

    /**
     * Whether both count the same in the same unit, so that their sum means something: what is laid and what is ordered of a
     * unit are both pieces, and yet they are not to be added.
     */
    boolean addsUpWith(QuantityRow other) {
        boolean sameUnit = line.quantity().unitCode().equals(other.line.quantity().unitCode());
        return sameUnit && (element.isPresent() && other.element.isPresent()
                ? item.equals(other.item)
                : line.formula().equals(other.line.formula()) && element.equals(other.element));
    }
}
