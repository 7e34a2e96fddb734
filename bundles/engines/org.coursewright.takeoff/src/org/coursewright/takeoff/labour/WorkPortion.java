package org.coursewright.takeoff.labour;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import java.util.Objects;

import org.coursewright.measure.Length;
import org.coursewright.takeoff.Fraction;

/**
 * A part of a task at one height, such as a course.
 *
 * @param element what is worked on, such as {@code W1/3}
 * @param height above the floor or scaffold base
 * @param quantity in the unit of the task, zero or more
 */
public record WorkPortion(String element, Length height, Fraction quantity) {

    public WorkPortion {
        Objects.requireNonNull(element, "element");
        Objects.requireNonNull(height, "height");
        require(quantity.signum() >= 0, "%s has a quantity of %s: it must not be negative.", element, quantity
                .toDecimal());
    }
}
