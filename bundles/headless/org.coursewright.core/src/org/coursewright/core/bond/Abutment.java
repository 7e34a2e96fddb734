package org.coursewright.core.bond;

import java.util.Objects;

import org.coursewright.measure.Length;

/**
 * A stretch of a wall against which another wall ends, tied and not bonded: the mason lays past it, but no opening may
 * come there.
 *
 * @param wall mark of the wall that passes
 * @param from where the stretch begins along it
 * @param to where it ends
 */
public record Abutment(String wall, Length from, Length to) {

    public Abutment {
        Objects.requireNonNull(wall, "wall");
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(to, "to");
    }
}
