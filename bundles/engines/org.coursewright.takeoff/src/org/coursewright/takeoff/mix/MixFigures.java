package org.coursewright.takeoff.mix;

import java.util.ArrayList;
import java.util.List;

import org.coursewright.measure.Quantity;
import org.coursewright.measure.UnitCode;
import org.coursewright.takeoff.Figure;
import org.coursewright.takeoff.Formula;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.Trace;
import org.coursewright.takeoff.TraceInput;

/** What a volume of mix takes, as lines with how each came about. */
public final class MixFigures {

    private static final String SOURCE = "yield by absolute volume, ACI 211.1";
    private static final Formula DRY = new Formula("mix.dryMass", "volume ÷ yieldOfRound × dryMassInRound", SOURCE);
    private static final Formula LOOSE = new Formula("mix.looseVolume", "dryMass ÷ looseDensity × (1 + bulking)",
            "geometry");
    private static final Formula WATER = new Formula("mix.waterToAdd", "mixing water − Σ dryMass × free moisture",
            "ACI 211.1");

    private MixFigures() {
    }

    /**
     * @param amounts of a mix
     * @return for each ingredient its dry mass (kg) and loose volume (m³), then water to add (L)
     */
    public static List<Figure> of(MixAmounts amounts) {
        MixAmounts round = amounts.recipe().oneRound();
        List<Figure> figures = new ArrayList<>();
        for (int i = 0; i < amounts.ingredients().size(); i++) {
            IngredientAmount amount = amounts.ingredients().get(i);
            String name = amount.ingredient().name();
            figures.add(figure(name, amount.dryMass(), UnitCode.KILOGRAM, Trace.of(DRY, new TraceInput("volume", amounts
                    .yield().toQuantity(UnitCode.CUBIC_METRE)), new TraceInput("yieldOfRound",
                            round.yield().toQuantity(
                                    UnitCode.CUBIC_METRE)),
                    mass("dryMassInRound", round.ingredients().get(i).dryMass()))));
            figures.add(figure(name, amount.in(Measure.LOOSE_VOLUME), UnitCode.CUBIC_METRE, Trace.of(LOOSE, mass(
                    "dryMass", amount.dryMass()),
                    new TraceInput("looseDensity", Quantity.of(amount.ingredient()
                            .density().loose().toDecimal(), UnitCode.KILOGRAM_PER_CUBIC_METRE)),
                    TraceInput.of(
                            "bulking", amount.ingredient().moisture().bulking()))));
        }
        figures.add(figure("water", amounts.waterToAdd(), UnitCode.LITRE, water(amounts)));
        return List.copyOf(figures);
    }

    private static Trace water(MixAmounts amounts) {
        List<TraceInput> inputs = new ArrayList<>();
        inputs.add(mass("mixing water", amounts.water()));
        for (IngredientAmount amount : amounts.ingredients()) {
            inputs.add(mass("dryMass " + amount.ingredient().name(), amount.dryMass()));
            inputs.add(TraceInput.of("free moisture " + amount.ingredient().name(), amount.ingredient().moisture()
                    .free()));
        }
        return new Trace(WATER, inputs, List.of());
    }

    private static Figure figure(String item, Fraction value, UnitCode unit, Trace trace) {
        return new Figure(item, Quantity.of(value.toDecimal(), unit), trace);
    }

    private static TraceInput mass(String symbol, Fraction kilograms) {
        return new TraceInput(symbol, Quantity.of(kilograms.toDecimal(), UnitCode.KILOGRAM));
    }
}
