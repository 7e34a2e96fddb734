package org.coursewright.core.cost;

import java.util.Objects;
import java.util.Optional;

import org.coursewright.takeoff.Fraction;

/**
 * Where units of a type come from.
 *
 * @param made whether they are pressed on site
 * @param mix of what, if chosen
 * @param mass of one (kg), if known
 */
record UnitSupply(boolean made, Optional<MixBrief> mix, Optional<Fraction> mass) {

    UnitSupply {
        Objects.requireNonNull(mix, "mix");
        Objects.requireNonNull(mass, "mass");
    }
}
