package org.coursewright.bond;

import java.util.Objects;

import org.coursewright.measure.Length;

/**
 * A unit's height and what the bed joints under it must keep.
 *
 * @param unitHeight height of the unit, greater than zero
 * @param least thinnest bed joint, zero or more
 * @param nominal bed joint aimed at, from {@code least} to {@code most}
 * @param most thickest bed joint
 */
public record BedRule(Length unitHeight, Length least, Length nominal, Length most) {

    /** @throws InvalidBondRequestException if the joints are out of order or the unit has no height */
    public BedRule {
        Objects.requireNonNull(unitHeight, "unitHeight");
        Objects.requireNonNull(least, "least");
        Objects.requireNonNull(nominal, "nominal");
        Objects.requireNonNull(most, "most");
        if (unitHeight.signum() <= 0) {
            throw new InvalidBondRequestException(
                    "The unit is %s high: it must be higher than nothing.".formatted(unitHeight));
        }
        if (least.signum() < 0 || nominal.isLessThan(least) || most.isLessThan(nominal)) {
            throw new InvalidBondRequestException(
                    "The bed joints %s, %s, %s are not in order: least, nominal, most.".formatted(least, nominal,
                            most));
        }
    }
}
