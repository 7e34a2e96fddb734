package org.coursewright.takeoff.mix;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import java.util.Objects;

import org.coursewright.takeoff.Fraction;

/**
 * How much mixing water, by mass: what is aimed at, and the range that the mixer may use to get the right feel.
 *
 * @param basis what it is a share of
 * @param least share, zero or more
 * @param target share, from least to most
 * @param most share
 */
public record Water(Basis basis, Fraction least, Fraction target, Fraction most) {

    /** Density of water (kg/m³). */
    static final Fraction DENSITY = Fraction.of(1000);

    /** What the share of water is taken of. */
    public enum Basis {
        /** Dry mass of the binders: the water–cement ratio. */
        BINDER,
        /** Dry mass of everything solid. */
        SOLIDS
    }

    public Water {
        Objects.requireNonNull(basis, "basis");
        require(least.signum() >= 0 && least.compareTo(target) <= 0 && target.compareTo(most) <= 0,
                "Water from %s by %s to %s: give shares from zero, rising.", least.toDecimal(), target.toDecimal(), most
                        .toDecimal());
    }

    /** @return exactly that share */
    public static Water exactly(Basis basis, Fraction share) {
        return new Water(basis, share, share, share);
    }
}
