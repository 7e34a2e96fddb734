package org.coursewright.core.cost;

import java.util.Objects;

import org.coursewright.core.takeoff.TakeoffLine;

/**
 * So much of a resource for one element and one kind of work. The resource is what rates name: the mark of a unit type or
 * material, a trade, a plant's mark.
 *
 * @param resource what is needed
 * @param element ASTM E1557 code of the element it is for
 * @param work what it is for
 * @param amount how much, and how that came about
 */
public record ResourceLine(String resource, String element, Work work, TakeoffLine amount) {

    public ResourceLine {
        Objects.requireNonNull(resource, "resource");
        Objects.requireNonNull(element, "element");
        Objects.requireNonNull(work, "work");
        Objects.requireNonNull(amount, "amount");
    }
}
