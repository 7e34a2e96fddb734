package org.coursewright.bond;

import java.util.Objects;

import org.coursewright.measure.Length;
import org.coursewright.measure.LengthRatio;

/**
 * Courses of equal height between two heights that both fall on a course line.
 *
 * @param from height of its bottom above the benchmark
 * @param to height of its top above the benchmark
 * @param bed width of each bed joint, one under each course; their number is the number of courses
 */
public record Lift(Length from, Length to, LengthRatio bed) {

    public Lift {
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(to, "to");
        Objects.requireNonNull(bed, "bed");
    }

    /** @return number of courses, at least 1 */
    public int courses() {
        return bed.count();
    }
}
