package org.coursewright.bond.internal.choice;

/**
 * How much work may still be put into one wall. It is counted, not timed, so that a wall is laid alike
 * on every machine; only walls far beyond what is built use it up.
 */
public final class WorkLimit {

    /** Words of shortfalls looked at to fill its runs. */
    private static final long MOST = 400_000_000;

    private long left;

    /** As much as is put into one wall. */
    public WorkLimit() {
        this(MOST);
    }

    /** @param most how much may be spent */
    public WorkLimit(long most) {
        left = most;
    }

    /** Takes off what has been spent. */
    public void spend(long work) {
        left -= work;
    }

    /** Whether nothing is left. */
    public boolean isSpent() {
        return left <= 0;
    }
}
