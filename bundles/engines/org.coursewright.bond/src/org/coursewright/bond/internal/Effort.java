package org.coursewright.bond.internal;

/**
 * How much work may still be put into one wall. It is counted, not timed, so that a wall is laid alike
 * on every machine; only walls far beyond what is built use it up.
 */
final class Effort {

    /** Words of shortfalls looked at to fill its runs. */
    private static final long MOST = 400_000_000;

    private long left;

    Effort() {
        this(MOST);
    }

    /** @param most how much may be spent */
    Effort(long most) {
        left = most;
    }

    void spend(long work) {
        left -= work;
    }

    boolean isSpent() {
        return left <= 0;
    }
}
