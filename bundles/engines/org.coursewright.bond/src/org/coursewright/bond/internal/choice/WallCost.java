package org.coursewright.bond.internal.choice;

/**
 * Costs of a wall in one number, so that sums of them compare as they should: short laps count far more than cuts, and
 * cuts far more than preference.
 */
public final class WallCost {

    /** Greatest preference of one value; up to 16,384 of them add up without reaching a cut. */
    public static final int MOST_PREFERENCE = (1 << 16) - 1;

    private static final int CUT = 30;
    private static final int VIOLATION = 46;

    private WallCost() {
    }

    /** The cost of so many short laps and cuts, and a preference up to {@link #MOST_PREFERENCE}. */
    public static long of(long violations, long cuts, long preference) {
        return (violations << VIOLATION) + (cuts << CUT) + preference;
    }

    /** How many short laps a sum of costs holds. */
    public static long violations(long cost) {
        return cost >> VIOLATION;
    }

    /** How many cuts a sum of costs holds. */
    public static long cuts(long cost) {
        return cost >> CUT & (1L << VIOLATION - CUT) - 1;
    }
}
