package org.coursewright.bond.internal;

/**
 * How much work may still be put into filling the runs of one wall. It is counted, not timed, so that a wall is laid alike
 * on every machine; only walls far beyond what is built use it up.
 */
final class Effort {

    /** Words of shortfalls looked at. */
    private static final long MOST = 400_000_000;

    private long left;

    Effort() {
        this(MOST);
    }

    /** @param most words of shortfalls that may be looked at */
    Effort(long most) {
        left = most;
    }

    void spend(long words) {
        left -= words;
    }

    boolean isSpent() {
        return left <= 0;
    }
}
