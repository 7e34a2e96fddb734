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
 * @param reason why nothing fills it and what would, a sentence
 */
public record UnfillableRun(int course, Length from, Length to, RunEnd startsWith, RunEnd endsWith, String reason) {

    public UnfillableRun {
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(to, "to");
        Objects.requireNonNull(startsWith, "startsWith");
        Objects.requireNonNull(endsWith, "endsWith");
        Objects.requireNonNull(reason, "reason");
    }
}
