package org.coursewright.takeoff.quantities;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import org.coursewright.measure.Length;
import org.coursewright.takeoff.Fraction;

/**
 * How units of a type are cut and how many break.
 *
 * @param kerf of the saw, zero or more
 * @param endTrimmed whether one more cut trims an end of every unit that is cut
 * @param breakage share ordered on top of what is laid and cut, such as 0.03 for 3 %; zero or more
 */
public record UnitRule(Length kerf, boolean endTrimmed, Fraction breakage) {

    public UnitRule {
        require(kerf.signum() >= 0, "The kerf is %s: it must not be negative.", kerf);
        require(breakage.signum() >= 0, "The share for breakage is %s: it must not be negative.", breakage);
    }
}
