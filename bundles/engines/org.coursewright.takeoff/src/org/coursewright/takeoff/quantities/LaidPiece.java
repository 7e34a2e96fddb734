package org.coursewright.takeoff.quantities;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import java.util.Objects;

import org.coursewright.measure.Length;

/**
 * One piece in a course.
 *
 * @param length along the wall at the bottom of the course, zero or more
 * @param topLength along the wall at the top of the course; differs from {@code length} along a rake only
 * @param kind where it comes from
 */
public record LaidPiece(Length length, Length topLength, Kind kind) {

    /** Where a piece comes from. */
    public enum Kind {
        /** The whole unit. */
        WHOLE,
        /** A special that is stocked or pressed to its length. */
        SPECIAL,
        /** Cut from a unit. */
        CUT
    }

    public LaidPiece {
        Objects.requireNonNull(kind, "kind");
        require(length.signum() >= 0 && topLength.signum() >= 0 && length.plus(topLength).signum() > 0,
                "A piece is %s long at the bottom and %s at the top: neither may be negative, nor both zero.", length,
                topLength);
        require(kind == Kind.CUT || length.equals(topLength),
                "A piece of %s at the bottom and %s at the top is raked: it must be a cut piece.", length, topLength);
    }

    /** @return a piece with square ends */
    public static LaidPiece square(Length length, Kind kind) {
        return new LaidPiece(length, length, kind);
    }

    /** @return the length of unit that it is cut from at least: the longer of bottom and top */
    public Length blank() {
        return length.isLessThan(topLength) ? topLength : length;
    }
}
