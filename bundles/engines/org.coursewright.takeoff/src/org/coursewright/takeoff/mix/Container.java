package org.coursewright.takeoff.mix;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import java.util.Objects;

import org.coursewright.takeoff.Fraction;

/**
 * What an ingredient is put into the mixer with.
 *
 * @param name such as "bag" or "shovel"
 * @param measure how its content is measured
 * @param content in the unit of the measure, greater than zero
 * @param step smallest part of it that can be put in, such as 1 or 1/2; greater than zero
 */
public record Container(String name, Measure measure, Fraction content, Fraction step) {

    public Container {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(measure, "measure");
        require(content.signum() > 0 && step.signum() > 0, "A %s of %s in steps of %s: both must be above zero.", name,
                content.toDecimal(), step.toDecimal());
    }

    /** @return how many of it, exactly, an amount fills */
    Fraction count(IngredientAmount amount) {
        return amount.in(measure).dividedBy(content);
    }
}
