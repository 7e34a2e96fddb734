package org.coursewright.takeoff.mix;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import java.util.List;
import java.util.Objects;

import org.coursewright.measure.UnitCode;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.Volume;

/**
 * A mix by parts.
 *
 * @param name of the mix
 * @param measure how parts are measured
 * @param parts the ingredients, at least one; the first leads when batches are rounded
 * @param water to be mixed in; a share of binders needs a binder
 * @param air share of the mixed volume that is air, from 0 to less than 1
 */
public record MixRecipe(String name, Measure measure, List<MixPart> parts, Water water, Fraction air) {

    public MixRecipe {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(measure, "measure");
        parts = List.copyOf(parts);
        require(!parts.isEmpty(), "Mix %s has no ingredients: give it some.", name);
        require(air.signum() >= 0 && air.compareTo(Fraction.ONE) < 0,
                "Mix %s has a share of air of %s: give one from 0 to less than 1.", name, air.toDecimal());
        require(water.basis() != Water.Basis.BINDER || parts.stream().anyMatch(part -> part.ingredient().binder()),
                "Mix %s has water by mass of binder, but no binder: give water by mass of solids.", name);
    }

    /** @return what one round of the parts takes and yields: parts of cubic metres or of kilograms */
    public MixAmounts oneRound() {
        List<IngredientAmount> ingredients = parts.stream().map(part -> new IngredientAmount(part.ingredient(), part
                .ingredient().dryMass(part.parts(), measure))).toList();
        Fraction mixingWater = waterFor(ingredients, water.target());
        Fraction solid = ingredients.stream().map(amount -> amount.ingredient().absoluteVolume(amount.dryMass()))
                .reduce(Fraction.ZERO, Fraction::plus);
        Fraction cubicMetres = solid.plus(mixingWater.dividedBy(Water.DENSITY)).dividedBy(Fraction.ONE.minus(air));
        return new MixAmounts(this, Volume.of(cubicMetres, UnitCode.CUBIC_METRE), ingredients, mixingWater);
    }

    /**
     * @param volume of mix wanted, zero or more
     * @return what it takes
     */
    public MixAmounts amountsFor(Volume volume) {
        MixAmounts round = oneRound();
        return round.times(volume.cubes().dividedBy(round.yield().cubes()));
    }

    Fraction waterFor(List<IngredientAmount> ingredients, Fraction share) {
        return ingredients.stream().filter(amount -> water.basis() == Water.Basis.SOLIDS || amount.ingredient()
                .binder()).map(IngredientAmount::dryMass).reduce(Fraction.ZERO, Fraction::plus).times(share);
    }
}
