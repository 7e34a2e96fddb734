package org.coursewright.core.geometry;

import java.util.Objects;

/**
 * A wall that is not in the network because it cannot be one.
 *
 * @param mark the wall's mark
 * @param reason what is wrong with it
 */
public record LeftOut(String mark, Reason reason) {

    /** Why a wall is left out. */
    public enum Reason {
        /** Its start and end are at most 1 mm apart. */
        NO_LENGTH,
        /** Its thickness is zero or negative, or more than 10 m. */
        NO_THICKNESS,
        /** A coordinate is more than 10 km from the origin. */
        TOO_FAR,
        /** Another wall before it has the same mark. */
        SAME_MARK
    }

    public LeftOut {
        Objects.requireNonNull(mark, "mark");
        Objects.requireNonNull(reason, "reason");
    }
}
