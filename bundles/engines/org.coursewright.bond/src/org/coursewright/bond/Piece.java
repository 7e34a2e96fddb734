package org.coursewright.bond;

import java.util.Objects;

import org.coursewright.measure.Length;

/**
 * One piece of a run.
 *
 * @param length along the wall, at the bottom of the course
 * @param kind where it comes from
 */
public record Piece(Length length, Kind kind) {

    /** Where a piece comes from. */
    public enum Kind {
        /** The whole unit. */
        WHOLE,
        /** A stocked special. */
        SPECIAL,
        /** Cut from a unit, to length or along a rake. */
        CUT
    }

    public Piece {
        Objects.requireNonNull(length, "length");
        Objects.requireNonNull(kind, "kind");
    }
}
