package org.coursewright.core.geometry;

import java.util.Objects;

import org.coursewright.measure.Length;

/**
 * Two walls that run through each other, which no mason can build: one of them is to be split.
 *
 * @param kind how
 * @param first mark of the wall that comes first
 * @param second mark of the other
 * @param x easting where the centre lines cross, or where the common part begins on the first, to the nearest 1/320 mm
 * @param y northing of that point
 */
public record Crossing(Kind kind, String first, String second, Length x, Length y) {

    /** How walls run through each other. */
    public enum Kind {
        /** The centre lines cross between their ends. */
        CROSS,
        /** The centre lines have a part in common. */
        OVERLAP,
        /** The centre lines run side by side, nearer to each other than the faces between them allow. */
        SIDE_BY_SIDE
    }

    public Crossing {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(first, "first");
        Objects.requireNonNull(second, "second");
        Objects.requireNonNull(x, "x");
        Objects.requireNonNull(y, "y");
    }
}
