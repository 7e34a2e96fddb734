package org.coursewright.takeoff.mix;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import org.coursewright.takeoff.Fraction;

/**
 * So many parts of an ingredient.
 *
 * @param ingredient what
 * @param parts how many, greater than zero
 */
public record MixPart(Ingredient ingredient, Fraction parts) {

    public MixPart {
        require(parts.signum() > 0, "%s parts of %s: give more than zero or leave it out.", parts.toDecimal(),
                ingredient.name());
    }
}
