package org.coursewright.bond.internal.odds;

/** The standard normal distribution, to about twelve digits. */
public final class NormalDistribution {

    private static final double NEAR = 3;
    /** Beyond this the probability is nothing or all in double precision. */
    private static final double FAR = 38;
    private static final int TERMS = 200;

    private NormalDistribution() {
    }

    /**
     * The probability of a value no greater than {@code z}: near zero by the series z + z³/3 + z⁵/(3·5) + … times the
     * density, further out by the continued fraction of the tail (both are in Abramowitz and Stegun, 26.2.11 and 26.2.14;
     * numbers from memory).
     */
    public static double cumulative(double z) {
        if (Math.abs(z) > FAR) {
            return z > 0 ? 1 : 0;
        }
        if (Math.abs(z) < NEAR) {
            return 0.5 + density(z) * series(z);
        }
        double tail = density(z) / fraction(Math.abs(z));
        return z > 0 ? 1 - tail : tail;
    }

    private static double density(double z) {
        return Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
    }

    private static double series(double z) {
        double term = z;
        double sum = z;
        for (int index = 1; index < TERMS; index++) {
            term *= z * z / (2 * index + 1);
            sum += term;
        }
        return sum;
    }

    /** z + 1/(z + 2/(z + 3/(z + …))). */
    private static double fraction(double z) {
        double value = z;
        for (int index = TERMS; index > 0; index--) {
            value = z + index / value;
        }
        return value;
    }

    /** The value that is not exceeded with that probability, above 0 and below 1: by halving an interval. */
    public static double quantile(double probability) {
        double low = -FAR;
        double high = FAR;
        for (int step = 0; step < TERMS && low < high; step++) {
            double middle = (low + high) / 2;
            if (cumulative(middle) < probability) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}
