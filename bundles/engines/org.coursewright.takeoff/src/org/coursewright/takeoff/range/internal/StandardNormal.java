package org.coursewright.takeoff.range.internal;

import java.util.function.DoubleUnaryOperator;

/** The standard normal distribution. */
public final class StandardNormal {

    private static final double ROOT_OF_TWO_PI = Math.sqrt(2 * Math.PI);
    /** From here on the continued fraction is better than the series. */
    private static final double TAIL = 3;
    private static final int DEPTH = 120;
    private static final Curve CUMULATIVE = cumulativeCurve();

    private StandardNormal() {
    }

    /** @return the density */
    public static double density(double normal) {
        return StrictMath.exp(-normal * normal / 2) / ROOT_OF_TWO_PI;
    }

    /**
     * The share of values below: Taylor series about zero in the middle, Laplace's continued fraction in the tails
     * (NIST Digital Library of Mathematical Functions, 7.6.2 and 7.9.1).
     *
     * @return from 0 to 1, to about 15 digits in both tails
     */
    public static double cumulative(double normal) {
        if (normal > TAIL) {
            return 1 - upperTail(normal);
        }
        return normal < -TAIL ? upperTail(-normal) : 0.5 + density(normal) * series(normal);
    }

    /** @return the same from a table, fast and to about 9 digits of 1 */
    public static DoubleUnaryOperator table() {
        return CUMULATIVE;
    }

    private static double series(double normal) {
        double term = normal;
        double sum = normal;
        for (int odd = 3; Math.abs(term) > 1e-17; odd += 2) {
            term *= normal * normal / odd;
            sum += term;
        }
        return sum;
    }

    private static double upperTail(double normal) {
        double fraction = normal;
        for (int k = DEPTH; k >= 1; k--) {
            fraction = normal + k / fraction;
        }
        return density(normal) / fraction;
    }

    private static Curve cumulativeCurve() {
        double[] values = new double[Curve.POINTS];
        double[] slopes = new double[Curve.POINTS];
        for (int point = 0; point < Curve.POINTS; point++) {
            values[point] = cumulative(Curve.normalAt(point));
            slopes[point] = density(Curve.normalAt(point));
        }
        return new Curve(values, slopes);
    }
}
