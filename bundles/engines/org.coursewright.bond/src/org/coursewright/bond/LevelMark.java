package org.coursewright.bond;

import java.util.Objects;

import org.coursewright.measure.Length;

/**
 * A height at which a course should end: a sill, a head, the underside of a beam, a plate.
 *
 * @param name what it is, for messages
 * @param height above the benchmark
 */
public record LevelMark(String name, Length height) {

    public LevelMark {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(height, "height");
    }
}
