package org.coursewright.bond.advice;

import java.util.Objects;

import org.coursewright.bond.WallLayout;
import org.coursewright.measure.Length;

/**
 * One change, made after those proposed before it.
 *
 * @param adjustable what changes
 * @param from its value in the plan
 * @param to its new value
 * @param before its wall before the change
 * @param after its wall after the change; laid, not estimated
 */
public record Proposal(Adjustable adjustable, Length from, Length to, WallLayout before, WallLayout after) {

    public Proposal {
        Objects.requireNonNull(adjustable, "adjustable");
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(to, "to");
        Objects.requireNonNull(before, "before");
        Objects.requireNonNull(after, "after");
    }

    /** @return how far the dimension changes, zero or more */
    public Length movement() {
        return to.minus(from).abs();
    }
}
