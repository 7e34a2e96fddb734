package org.coursewright.core.validity;

import org.coursewright.measure.Length;

/**
 * What no building of this kind exceeds. The limits keep a slip of the pen (a missing unit, a lost decimal point) from
 * becoming a computation that never ends.
 */
final class Limits {

    /** Farthest that a point may lie from the plan's origin. */
    static final Length FARTHEST = Length.ofMillimetres(10_000_000);
    /** Longest wall. */
    static final Length LONGEST_WALL = Length.ofMillimetres(1_000_000);
    /** Highest wall. */
    static final Length HIGHEST_WALL = Length.ofMillimetres(100_000);
    /** Smallest side of a unit. */
    static final Length SMALLEST_UNIT = Length.ofMillimetres(10);
    /** Largest side of a unit. */
    static final Length LARGEST_UNIT = Length.ofMillimetres(5_000);
    /** Widest joint. */
    static final Length WIDEST_JOINT = Length.ofMillimetres(100);

    private Limits() {
    }
}
