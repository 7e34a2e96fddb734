package org.coursewright.bond;

/** How a run begins or ends. */
public enum RunEnd {
    /** With the face of a piece: a jamb, a free end, the outer face of a corner where the wall runs through. */
    FACE,
    /** With a head joint against other masonry. */
    JOINT,
    /** With a piece cut along a rake; the piece's length is measured at the bottom of the course. */
    RAKE
}
