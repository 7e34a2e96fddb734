package org.coursewright.takeoff.mix;

import java.util.List;
import java.util.Objects;

import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.Volume;

/**
 * What some volume of a mix takes.
 *
 * @param recipe of the mix
 * @param yield the volume
 * @param ingredients in the order of the recipe
 * @param water mixing water aimed at (kg, which is litres), that in moist ingredients included
 */
public record MixAmounts(MixRecipe recipe, Volume yield, List<IngredientAmount> ingredients, Fraction water) {

    public MixAmounts {
        Objects.requireNonNull(recipe, "recipe");
        Objects.requireNonNull(yield, "yield");
        ingredients = List.copyOf(ingredients);
        Objects.requireNonNull(water, "water");
    }

    /**
     * @return water to add for the target (kg, which is litres): mixing water less what moist ingredients bring; negative if
     *         they bring too much, so that they have to dry first
     */
    public Fraction waterToAdd() {
        return toAdd(water);
    }

    /** @return least water to add, negative as for {@link #waterToAdd()} */
    public Fraction leastWaterToAdd() {
        return toAdd(recipe.waterFor(ingredients, recipe.water().least()));
    }

    /** @return most water to add, negative as for {@link #waterToAdd()} */
    public Fraction mostWaterToAdd() {
        return toAdd(recipe.waterFor(ingredients, recipe.water().most()));
    }

    /** @return everything multiplied */
    public MixAmounts times(Fraction factor) {
        return new MixAmounts(recipe, yield.times(factor), ingredients.stream().map(amount -> amount.times(factor))
                .toList(), water.times(factor));
    }

    private Fraction toAdd(Fraction mixingWater) {
        return ingredients.stream().map(amount -> amount.dryMass().times(amount.ingredient().moisture().free())).reduce(
                mixingWater, Fraction::minus);
    }
}
