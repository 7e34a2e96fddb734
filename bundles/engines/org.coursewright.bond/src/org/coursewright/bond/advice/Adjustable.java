package org.coursewright.bond.advice;

import java.util.Objects;
import java.util.Optional;

import org.coursewright.measure.Length;

/**
 * A dimension that may change.
 *
 * @param wall mark of the wall
 * @param opening mark of the opening, empty for the wall itself
 * @param dimension what of it
 * @param least greatest change to the less, zero or negative
 * @param most greatest change to the more, zero or positive
 */
public record Adjustable(String wall, Optional<String> opening, Dimension dimension, Length least, Length most) {

    public Adjustable {
        Objects.requireNonNull(wall, "wall");
        Objects.requireNonNull(opening, "opening");
        Objects.requireNonNull(dimension, "dimension");
        Objects.requireNonNull(least, "least");
        Objects.requireNonNull(most, "most");
        boolean ofOpening = dimension != Dimension.LENGTH;
        boolean ofWall = dimension == Dimension.LENGTH || dimension == Dimension.OFFSET;
        if (opening.isPresent() ? !ofOpening : !ofWall) {
            throw new IllegalArgumentException(
                    "Wall %s: an opening has an offset and a width, a wall an offset and a length.".formatted(wall));
        }
        if (least.signum() > 0 || most.signum() < 0) {
            throw new IllegalArgumentException(
                    "Wall %s: a change from %s to %s does not leave the dimension as it is.".formatted(wall, least,
                            most));
        }
    }

    /**
     * A dimension that may change as much either way.
     *
     * @param tolerance zero or more
     */
    public static Adjustable within(String wall, Optional<String> opening, Dimension dimension, Length tolerance) {
        return new Adjustable(wall, opening, dimension, tolerance.negated(), tolerance);
    }
}
