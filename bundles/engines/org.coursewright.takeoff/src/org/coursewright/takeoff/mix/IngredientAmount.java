package org.coursewright.takeoff.mix;

import java.util.Objects;

import org.coursewright.takeoff.Fraction;

/**
 * So much of an ingredient.
 *
 * @param ingredient what
 * @param dryMass without any water (kg)
 */
public record IngredientAmount(Ingredient ingredient, Fraction dryMass) {

    public IngredientAmount {
        Objects.requireNonNull(ingredient, "ingredient");
        Objects.requireNonNull(dryMass, "dryMass");
    }

    /** @return the same amount otherwise measured, in the unit of the measure */
    public Fraction in(Measure measure) {
        return ingredient.amount(dryMass, measure);
    }

    IngredientAmount times(Fraction factor) {
        return new IngredientAmount(ingredient, dryMass.times(factor));
    }
}
