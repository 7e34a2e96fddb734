package org.coursewright.core.cost;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.coursewright.measure.UnitCode;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.Volume;
import org.coursewright.takeoff.mix.IngredientAmount;
import org.coursewright.takeoff.mix.Measure;
import org.coursewright.takeoff.mix.MixAmounts;
import org.coursewright.takeoff.mix.MixRecipe;

/**
 * A mix, copied out of the project.
 *
 * @param mark its mark
 * @param recipe its parts, if all their densities are known; else the mix is counted as a whole
 * @param materials in the order of the parts
 * @param yield volume of mix by loose volume of its dry parts, or empty to reckon with absolute volumes
 * @param waste mixed on top of what is in place
 * @param dryDensity of blocks pressed of it (kg/m³), if known
 * @param loose volume of loose mix by volume of pressed block
 * @param spoiled pressed on top for spill and rejects
 * @param stabiliser by dry mass of soil, or empty to follow from the parts
 */
record MixBrief(String mark, Optional<MixRecipe> recipe, List<MaterialBrief> materials, Optional<Fraction> yield,
        Fraction waste, Optional<Fraction> dryDensity, Fraction loose, Fraction spoiled,
        Optional<Fraction> stabiliser) {

    MixBrief {
        Objects.requireNonNull(mark, "mark");
        Objects.requireNonNull(recipe, "recipe");
        materials = List.copyOf(materials);
        Objects.requireNonNull(yield, "yield");
    }

    /** @return what one round of the parts takes, with the volume it yields; the mix has a recipe */
    MixAmounts oneRound() {
        MixAmounts round = recipe.orElseThrow().oneRound();
        return yield.map(share -> new MixAmounts(round.recipe(), Volume.of(loose(round).times(share),
                UnitCode.CUBIC_METRE), round.ingredients(), round.water())).orElse(round);
    }

    /** @return what a volume of the mix takes; the mix has a recipe */
    MixAmounts amountsFor(Volume volume) {
        MixAmounts round = oneRound();
        return round.times(volume.cubes().dividedBy(round.yield().cubes()));
    }

    /** @return whether blocks can be pressed of it: all densities known, soil in it, and a binder if it is stabilised */
    boolean isPressable() {
        return recipe.isPresent() && dryDensity.isPresent() && mass(false).signum() > 0 && (mass(true).signum() > 0
                || stabiliser.filter(share -> share.signum() > 0).isEmpty());
    }

    /** @return dry mass of stabiliser by dry mass of soil, as given or as the parts have it; the mix has a recipe */
    Fraction stabiliserOfSoil() {
        return stabiliser.orElseGet(() -> mass(true).dividedBy(mass(false)));
    }

    /** @return dry mass of all binders, or of all else, in one round */
    Fraction mass(boolean binder) {
        return oneRound().ingredients().stream().filter(amount -> amount.ingredient().binder() == binder)
                .map(IngredientAmount::dryMass).reduce(Fraction.ZERO, Fraction::plus);
    }

    private static Fraction loose(MixAmounts round) {
        return round.ingredients().stream().map(amount -> amount.in(Measure.LOOSE_VOLUME)).reduce(Fraction.ZERO,
                Fraction::plus);
    }
}
