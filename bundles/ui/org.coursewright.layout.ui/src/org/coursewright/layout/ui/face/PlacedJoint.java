package org.coursewright.layout.ui.face;

import org.coursewright.measure.Length;

/**
 * A head joint at its exact place.
 *
 * @param start where it begins along the wall, in 1/320 mm times {@code parts}
 * @param end where it ends, in 1/320 mm times {@code parts}
 * @param parts into how many parts 1/320 mm is divided, at least 1
 * @param atEnd whether it lies at the end of a run, against other masonry
 */
record PlacedJoint(long start, long end, long parts, boolean atEnd) {

    /** Whether a joint of the next course ends at least so far before this one begins. */
    boolean isClearOf(Length least, PlacedJoint earlier) {
        return start * earlier.parts - earlier.end * parts >= least.units() * parts * earlier.parts;
    }

    /** Whether the two lie over one another because both runs end against the same masonry: nobody can lap them. */
    boolean isStraightWith(PlacedJoint next) {
        return atEnd && next.atEnd
                && (start * next.parts == next.start * parts || end * next.parts == next.end * parts);
    }

    /** The middle between this joint and another, to the nearest 1/320 mm. */
    Length middle(PlacedJoint next) {
        return Length.ofUnits(Math.round(((double) (start + end) / parts + (double) (next.start + next.end)
                / next.parts) / 4));
    }
}
