package org.coursewright.bond;

import java.util.Objects;

import org.coursewright.measure.Length;

/**
 * A run that no allowed pieces and joints fill.
 *
 * @param course number of its course
 * @param from where it begins along the wall
 * @param to where it ends along the wall
 * @param startsWith how it begins
 * @param endsWith how it ends
 * @param reason why nothing fills it
 * @param nearest lengths that could be filled
 */
public record UnfillableRun(int course, Length from, Length to, RunEnd startsWith, RunEnd endsWith,
        UnfillableReason reason, NearestLengths nearest) {

    public UnfillableRun {
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(to, "to");
        Objects.requireNonNull(startsWith, "startsWith");
        Objects.requireNonNull(endsWith, "endsWith");
        Objects.requireNonNull(reason, "reason");
        Objects.requireNonNull(nearest, "nearest");
    }

    /** @return {@code to - from} */
    public Length length() {
        return to.minus(from);
    }
}
