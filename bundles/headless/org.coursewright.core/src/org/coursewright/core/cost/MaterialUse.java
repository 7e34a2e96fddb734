package org.coursewright.core.cost;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.coursewright.measure.Quantity;
import org.coursewright.measure.UnitCode;
import org.coursewright.takeoff.Formula;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.Trace;
import org.coursewright.takeoff.TraceInput;
import org.coursewright.takeoff.cost.UnitConversion;
import org.coursewright.takeoff.mix.Ingredient;
import org.coursewright.takeoff.mix.IngredientAmount;
import org.coursewright.takeoff.mix.Measure;

/**
 * Turns a dry mass of a material into what is bought of it: mass as it lies, loose volume or packs, with its waste.
 *
 * @param material what
 * @param ingredient the same as mixes know it
 * @param resources where lines go
 */
record MaterialUse(MaterialBrief material, Ingredient ingredient, Resources resources) {

    private static final String SOURCE = "yield by absolute volume, ACI 211.1; moisture and waste: geometry";

    /**
     * How a dry mass came about.
     *
     * @param expression such as {@code volume ÷ yieldOfRound × dryMassInRound}
     * @param inputs of the expression
     * @param elements what it was taken from
     */
    record Origin(String expression, List<TraceInput> inputs, List<String> elements) {
    }

    void add(String element, Work work, Fraction dryMass, Origin origin) {
        Fraction wasted = Fraction.ONE.plus(material.waste());
        Fraction moist = dryMass.times(Fraction.ONE.plus(ingredient.moisture().content())).times(wasted);
        Fraction loose = new IngredientAmount(ingredient, dryMass).in(Measure.LOOSE_VOLUME).times(wasted);
        if (!material.dugOnSite()) {
            resources.haul(element, material.mark(), moist);
        }
        UnitCode unit = material.unit().orElse(UnitCode.KILOGRAM);
        if (compares(unit, UnitCode.CUBIC_METRE)) {
            put(element, work, loose, UnitCode.CUBIC_METRE, "material.loose",
                    " ÷ looseDensity × (1 + bulking) × (1 + waste)", origin);
        } else if (compares(unit, UnitCode.KILOGRAM)) {
            put(element, work, moist, UnitCode.KILOGRAM, "material.mass", " × (1 + moisture) × (1 + waste)", origin);
        } else {
            packs(element, work, moist, loose, unit, origin);
        }
    }

    private void packs(String element, Work work, Fraction moist, Fraction loose, UnitCode unit, Origin origin) {
        Optional<Fraction> byMass = material.pack().flatMap(pack -> inUnit(pack, UnitCode.KILOGRAM));
        Optional<Fraction> byVolume = material.pack().flatMap(pack -> inUnit(pack, UnitCode.CUBIC_METRE));
        if (byMass.isPresent()) {
            put(element, work, moist.dividedBy(byMass.get()), unit, "material.packs",
                    " × (1 + moisture) × (1 + waste) ÷ pack", origin);
        } else if (byVolume.isPresent()) {
            put(element, work, loose.dividedBy(byVolume.get()), unit, "material.packs",
                    " ÷ looseDensity × (1 + bulking) × (1 + waste) ÷ pack", origin);
        } else {
            resources.findings().warning("material.pack", Resources.named("material " + material.mark()),
                    "It is measured in %s, but nothing says what one holds. Give its pack; it is counted in kilograms."
                            .formatted(unit.title()));
            put(element, work, moist, UnitCode.KILOGRAM, "material.mass", " × (1 + moisture) × (1 + waste)", origin);
        }
    }

    private void put(String element, Work work, Fraction amount, UnitCode unit, String formula, String tail,
            Origin origin) {
        List<TraceInput> inputs = new ArrayList<>(origin.inputs());
        if (tail.contains("moisture")) {
            inputs.add(TraceInput.of("moisture", ingredient.moisture().content()));
        }
        if (tail.contains("looseDensity")) {
            inputs.add(new TraceInput("looseDensity", Quantity.of(ingredient.density().loose().toDecimal(),
                    UnitCode.KILOGRAM_PER_CUBIC_METRE)));
            inputs.add(TraceInput.of("bulking", ingredient.moisture().bulking()));
        }
        inputs.add(TraceInput.of("waste", material.waste()));
        material.pack().filter(pack -> tail.contains("pack")).ifPresent(pack -> inputs.add(new TraceInput("pack",
                pack)));
        resources.add(material.mark(), element, work, amount, unit, new Trace(new Formula(formula, origin.expression()
                + tail, SOURCE), inputs, origin.elements()));
    }

    private static boolean compares(UnitCode unit, UnitCode other) {
        return inUnit(Quantity.of(Fraction.ONE.toDecimal(), unit), other).isPresent();
    }

    private static Optional<Fraction> inUnit(Quantity quantity, UnitCode unit) {
        return UnitConversion.convert(quantity, unit).map(converted -> Fraction.of(converted.value()));
    }
}
