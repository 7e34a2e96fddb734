package org.coursewright.takeoff.mix;

import java.util.Objects;

import org.coursewright.takeoff.Fraction;

/**
 * A line of a batch card.
 *
 * @param ingredient what
 * @param container with what
 * @param exact how many by the recipe
 * @param rounded how many to put in: a whole number of steps of the container
 */
public record BatchLine(Ingredient ingredient, Container container, Fraction exact, Fraction rounded) {

    public BatchLine {
        Objects.requireNonNull(ingredient, "ingredient");
        Objects.requireNonNull(container, "container");
        Objects.requireNonNull(exact, "exact");
        Objects.requireNonNull(rounded, "rounded");
    }

    /** @return by what share the rounded amount is more than that of the recipe; negative if it is less */
    public Fraction deviation() {
        return rounded.dividedBy(exact).minus(Fraction.ONE);
    }

    /** @return the rounded amount */
    public IngredientAmount amount() {
        return new IngredientAmount(ingredient, ingredient.dryMass(rounded.times(container.content()), container
                .measure()));
    }
}
