package org.coursewright.bond.advice;

/** What of an element may change. */
public enum Dimension {
    /**
     * Where an opening begins along its wall, its lintel going with it; or how far a wall stands across its own direction, walls
     * that end at it becoming longer or shorter.
     */
    OFFSET,
    /** How wide an opening is; its beginning stays, and its lintel grows or shrinks with it. */
    WIDTH,
    /**
     * Where an opening begins, its end staying: it becomes narrower by as much as it begins later, and its lintel with it. Can
     * be looked at, as while somebody drags that jamb; nothing is proposed by it.
     */
    NEAR_JAMB,
    /** How long a wall is that ends in the open; its other end stays, and so does what is in it. */
    LENGTH
}
