package org.coursewright.bond.advice;

import java.util.Objects;

import org.coursewright.measure.Length;

/**
 * A stretch of a wall where no opening may come, such as one against which another wall ends.
 *
 * @param wall mark of the wall
 * @param from where the stretch begins along it
 * @param to where it ends
 */
public record KeepClear(String wall, Length from, Length to) {

    public KeepClear {
        Objects.requireNonNull(wall, "wall");
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(to, "to");
    }
}
