package org.coursewright.core.cost;

import java.util.Objects;
import java.util.Optional;

import org.coursewright.takeoff.Fraction;

/**
 * How far something may be off.
 *
 * @param low least that it may be by what is expected, greater than zero, at most 1
 * @param high most that it may be by that, at least 1
 * @param movesWith mark of the uncertainty it shares, if any
 */
record RangeBrief(Fraction low, Fraction high, Optional<String> movesWith) {

    /** Nothing is uncertain. */
    static final RangeBrief CERTAIN = new RangeBrief(Fraction.ONE, Fraction.ONE, Optional.empty());

    RangeBrief {
        Objects.requireNonNull(low, "low");
        Objects.requireNonNull(high, "high");
        Objects.requireNonNull(movesWith, "movesWith");
    }

    /** @return both together: hours that may be off, at a rate that may be off, moving with the first that says so */
    RangeBrief times(RangeBrief other) {
        return new RangeBrief(low.times(other.low), high.times(other.high), movesWith.or(other::movesWith));
    }
}
