package org.coursewright.core.geometry;

/** A place on a wall's centre line. */
public enum Place {
    /** Its first end. */
    START,
    /** Its last end. */
    END,
    /** Somewhere between its ends. */
    ALONG
}
