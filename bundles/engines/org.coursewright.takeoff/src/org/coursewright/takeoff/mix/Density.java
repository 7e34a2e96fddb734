package org.coursewright.takeoff.mix;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import org.coursewright.takeoff.Fraction;

/**
 * Dry densities of an ingredient in kg/m³, all greater than zero: loose, compacted and of its particles in rising order.
 *
 * @param loose of the material as it is poured, dry
 * @param compacted of the material rammed or pressed, dry
 * @param particle of its particles, without voids between them
 */
public record Density(Fraction loose, Fraction compacted, Fraction particle) {

    public Density {
        require(loose.signum() > 0 && loose.compareTo(compacted) <= 0 && compacted.compareTo(particle) <= 0,
                "Densities of %s loose, %s compacted and %s kg/m³ of the particles: give them above zero and rising.",
                loose.toDecimal(), compacted.toDecimal(), particle.toDecimal());
    }

    /** @return densities in whole kg/m³ */
    public static Density of(long loose, long compacted, long particle) {
        return new Density(Fraction.of(loose), Fraction.of(compacted), Fraction.of(particle));
    }
}
