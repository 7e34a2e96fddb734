package org.coursewright.core.cost;

import java.util.Objects;
import java.util.Optional;

import org.coursewright.measure.Length;
import org.coursewright.measure.Quantity;
import org.coursewright.measure.UnitCode;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.mix.Ingredient;

/**
 * A material, copied out of the project.
 *
 * @param mark its mark
 * @param unit it is measured in, if known
 * @param ingredient what mixes know of it, if its densities are given
 * @param pack content of one pack, if it comes in packs
 * @param waste lost on top of what is used
 * @param largestParticle its largest grain, if known
 * @param dugOnSite whether it needs no haulage
 */
record MaterialBrief(String mark, Optional<UnitCode> unit, Optional<Ingredient> ingredient, Optional<Quantity> pack,
        Fraction waste, Optional<Length> largestParticle, boolean dugOnSite) {

    MaterialBrief {
        Objects.requireNonNull(mark, "mark");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(ingredient, "ingredient");
        Objects.requireNonNull(pack, "pack");
        Objects.requireNonNull(waste, "waste");
        Objects.requireNonNull(largestParticle, "largestParticle");
    }
}
