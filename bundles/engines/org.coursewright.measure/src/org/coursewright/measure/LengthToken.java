package org.coursewright.measure;

/**
 * A piece of a typed length.
 *
 * @param kind what it is
 * @param text how it was typed, in plain characters
 * @param tight whether it follows the piece before without a gap
 */
record LengthToken(Kind kind, String text, boolean tight) {

    /** What a piece of a typed length can be. */
    enum Kind {
        /** Digits with at most one point. */
        NUMBER,
        /** Two whole numbers with a slash. */
        FRACTION,
        /** A word or a mark of feet or inches. */
        UNIT,
        /** A dash, which is a minus sign in front. */
        DASH,
        /** A plus sign. */
        PLUS
    }

    boolean is(Kind wanted) {
        return kind == wanted;
    }
}
