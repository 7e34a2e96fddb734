package org.coursewright.core.cost;

import java.util.List;

import org.coursewright.measure.Quantity;
import org.coursewright.measure.UnitCode;
import org.coursewright.takeoff.Formula;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.Trace;
import org.coursewright.takeoff.TraceInput;
import org.coursewright.takeoff.Volume;
import org.coursewright.takeoff.mix.IngredientAmount;
import org.coursewright.takeoff.mix.MixAmounts;

/**
 * Takes a volume of a mix apart into its materials and water.
 *
 * @param mix what is mixed
 * @param resources where lines go
 */
record MixUse(MixBrief mix, Resources resources) {

    /** Rates call water this. */
    static final String WATER = "water";

    private static final Formula VOLUME = new Formula("mix.volume", "volume", "geometry");
    private static final Formula WATER_FORMULA = new Formula("mix.water", "volume ÷ yieldOfRound × waterInRound",
            "ACI 211.1");

    void add(String element, Work work, Volume volume, List<String> elements) {
        TraceInput amount = new TraceInput("volume", volume.toQuantity(UnitCode.CUBIC_METRE));
        if (mix.recipe().isEmpty()) {
            resources.add(mix.mark(), element, work, volume.in(UnitCode.CUBIC_METRE), UnitCode.CUBIC_METRE, new Trace(
                    VOLUME, List.of(amount), elements));
            return;
        }
        MixAmounts round = mix.oneRound();
        MixAmounts amounts = mix.amountsFor(volume);
        TraceInput yield = new TraceInput("yieldOfRound", round.yield().toQuantity(UnitCode.CUBIC_METRE));
        for (int i = 0; i < amounts.ingredients().size(); i++) {
            IngredientAmount part = amounts.ingredients().get(i);
            new MaterialUse(mix.materials().get(i), part.ingredient(), resources).add(element, work, part.dryMass(),
                    new MaterialUse.Origin("volume ÷ yieldOfRound × dryMassInRound", List.of(amount, yield,
                            kilograms("dryMassInRound", round.ingredients().get(i).dryMass())), elements));
        }
        resources.add(WATER, element, work, amounts.water(), UnitCode.LITRE, new Trace(WATER_FORMULA, List.of(amount,
                yield, kilograms("waterInRound", round.water())), elements));
    }

    static TraceInput kilograms(String symbol, Fraction mass) {
        return new TraceInput(symbol, Quantity.of(mass.toDecimal(), UnitCode.KILOGRAM));
    }
}
