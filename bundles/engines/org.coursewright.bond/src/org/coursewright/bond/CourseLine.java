package org.coursewright.bond;

import java.util.Objects;

import org.coursewright.measure.Length;
import org.coursewright.measure.LengthRatio;

/**
 * The top of a course on the story pole.
 *
 * @param course counted from the base, the first is 1
 * @param height exactly, above the benchmark
 */
public record CourseLine(int course, LengthRatio height) {

    public CourseLine {
        Objects.requireNonNull(height, "height");
    }

    /**
     * The height as it is marked on the pole. Each line is rounded from its exact height, so errors do not add up.
     *
     * @param step the finest mark, such as 1/16 in or 1 mm, greater than zero
     * @return the nearest multiple of {@code step}, halves upwards
     */
    public Length marked(Length step) {
        long parts = Math.multiplyExact(step.units(), 2L * height.count());
        return step.times(Math.floorDiv(Math.addExact(Math.multiplyExact(2, height.total().units()),
                Math.multiplyExact(step.units(), height.count())), parts));
    }
}
