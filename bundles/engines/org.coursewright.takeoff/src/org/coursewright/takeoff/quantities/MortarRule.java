package org.coursewright.takeoff.quantities;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import java.util.Objects;

import org.coursewright.takeoff.Fraction;

/**
 * Which mortar goes where, and how much is wasted.
 *
 * @param firstMix mix of the first course, its bed joint included
 * @param firstWaste share ordered on top of what that takes, such as 0.15 for 15 %; zero or more
 * @param restMix mix of all other courses; may be the same
 * @param restWaste share ordered on top of what those take, zero or more
 * @param fill how much of the joints is filled
 */
public record MortarRule(String firstMix, Fraction firstWaste, String restMix, Fraction restWaste, JointFill fill) {

    public MortarRule {
        Objects.requireNonNull(firstMix, "firstMix");
        Objects.requireNonNull(restMix, "restMix");
        Objects.requireNonNull(fill, "fill");
        require(firstWaste.signum() >= 0, "The waste of mix %s is %s: it must not be negative.", firstMix,
                firstWaste);
        require(restWaste.signum() >= 0, "The waste of mix %s is %s: it must not be negative.", restMix, restWaste);
        require(!firstMix.equals(restMix) || firstWaste.equals(restWaste),
                "Mix %s has waste %s in the first course and %s in the rest: name two mixes or give one waste.",
                firstMix, firstWaste, restWaste);
    }

    /** @return whether a course, by its number, is laid in the mix of the first course */
    static boolean isFirst(int course) {
        return course == 1;
    }
}
