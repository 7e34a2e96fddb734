package org.coursewright.takeoff.mix;

import java.util.Objects;

import org.coursewright.takeoff.Fraction;

/**
 * Something solid that is mixed.
 *
 * @param name such as "cement" or "sand"
 * @param binder whether it binds: cement, lime
 * @param density dry
 * @param moisture as it lies
 */
public record Ingredient(String name, boolean binder, Density density, Moisture moisture) {

    public Ingredient {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(density, "density");
        Objects.requireNonNull(moisture, "moisture");
    }

    /**
     * @param amount in the unit of the measure
     * @param measure how it is measured
     * @return its dry mass (kg)
     */
    public Fraction dryMass(Fraction amount, Measure measure) {
        return amount.times(dryMassOfOne(measure));
    }

    /**
     * @param dryMass (kg)
     * @param measure how it is to be measured
     * @return the amount in the unit of the measure
     */
    public Fraction amount(Fraction dryMass, Measure measure) {
        return dryMass.dividedBy(dryMassOfOne(measure));
    }

    /** @return volume of the particles (m³) in a dry mass (kg) */
    public Fraction absoluteVolume(Fraction dryMass) {
        return dryMass.dividedBy(density.particle());
    }

    private Fraction dryMassOfOne(Measure measure) {
        return switch (measure) {
            case LOOSE_VOLUME -> density.loose().dividedBy(Fraction.ONE.plus(moisture.bulking()));
            case COMPACTED_VOLUME -> density.compacted();
            case DRY_MASS -> Fraction.ONE;
            case MOIST_MASS -> Fraction.ONE.dividedBy(Fraction.ONE.plus(moisture.content()));
        };
    }
}
