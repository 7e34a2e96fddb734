package org.coursewright.takeoff.range.internal;

import java.util.function.DoubleUnaryOperator;

/** The beta distribution on 0 to 1, with both parameters at least 1. */
public final class Beta {

    private static final double TINY = 1e-300;
    private static final double CLOSE = 1e-15;
    private static final double SETTLED = 1e-13;
    private static final int MOST_STEPS = 200;
    /** Coefficients of Lanczos's approximation of the gamma function for g = 7, by P. Godfrey; good to 15 digits. */
    private static final double[] LANCZOS = {0.99999999999980993, 676.5203681218851, -1259.1392167224028,
            771.32342877765313, -176.61502916214059, 12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6,
            1.5056327351493116e-7};

    private final double first;
    private final double second;
    private final double logOfBeta;

    /**
     * @param first parameter, at least 1: pulls away from 0
     * @param second parameter, at least 1: pulls away from 1
     */
    public Beta(double first, double second) {
        this.first = first;
        this.second = second;
        logOfBeta = logGamma(first) + logGamma(second) - logGamma(first + second);
    }

    /** @return the density at a value between 0 and 1 */
    public double density(double value) {
        return StrictMath.exp((first - 1) * StrictMath.log(value) + (second - 1) * StrictMath.log1p(-value)
                - logOfBeta);
    }

    /**
     * The regularised incomplete beta function, by the continued fraction 8.17.22 of the NIST Digital Library of
     * Mathematical Functions.
     *
     * @return the share below a value from 0 to 1
     */
    public double cumulative(double value) {
        if (value <= 0 || value >= 1) {
            return value <= 0 ? 0 : 1;
        }
        double front = StrictMath.exp(first * StrictMath.log(value) + second * StrictMath.log1p(-value) - logOfBeta);
        return value < (first + 1) / (first + second + 2)
                ? front * fraction(first, second, value) / first
                : 1 - front * fraction(second, first, 1 - value) / second;
    }

    /**
     * @param share from 0 to 1
     * @return the value with that share below, by Newton's method kept between bounds
     */
    public double quantile(double share) {
        return quantile(share, first / (first + second));
    }

    private double quantile(double share, double guess) {
        double low = 0;
        double high = 1;
        double value = guess;
        for (int step = 0; step < MOST_STEPS && high - low > SETTLED * high; step++) {
            double miss = cumulative(value) - share;
            if (miss > 0) {
                high = value;
            } else {
                low = value;
            }
            double next = value - miss / density(value);
            double better = next > low && next < high ? next : (low + high) / 2;
            if (Math.abs(better - value) <= SETTLED * value) {
                return better;
            }
            value = better;
        }
        return value;
    }

    /** @return the function that turns a standard normal value into a beta value with the same share below */
    public DoubleUnaryOperator fromNormal() {
        double[] values = new double[Curve.POINTS];
        double[] slopes = new double[Curve.POINTS];
        fill(this, values, slopes, false);
        fill(new Beta(second, first), values, slopes, true);
        return new Curve(values, slopes);
    }

    /** Fills half of the curve from the middle out, in the tail where shares are small and so exact. */
    private static void fill(Beta beta, double[] values, double[] slopes, boolean mirrored) {
        double value = beta.first / (beta.first + beta.second);
        for (int point = Curve.POINTS / 2; point >= 0; point--) {
            double normal = Curve.normalAt(point);
            value = beta.quantile(StandardNormal.cumulative(normal), value);
            double slope = value <= 0 ? 0 : StandardNormal.density(normal) / beta.density(value);
            int place = mirrored ? Curve.POINTS - 1 - point : point;
            values[place] = mirrored ? 1 - value : value;
            slopes[place] = slope;
        }
    }

    /** Lentz's method. */
    private static double fraction(double a, double b, double x) {
        double c = 1;
        double d = 1 / nonZero(1 - (a + b) * x / (a + 1));
        double fraction = d;
        for (int m = 1; m <= MOST_STEPS; m++) {
            double even = m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m));
            d = 1 / nonZero(1 + even * d);
            c = nonZero(1 + even / c);
            fraction *= d * c;
            double odd = -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1));
            d = 1 / nonZero(1 + odd * d);
            c = nonZero(1 + odd / c);
            fraction *= d * c;
            if (Math.abs(d * c - 1) < CLOSE) {
                return fraction;
            }
        }
        return fraction;
    }

    private static double nonZero(double value) {
        return Math.abs(value) < TINY ? TINY : value;
    }

    private static double logGamma(double argument) {
        double x = argument - 1;
        double sum = LANCZOS[0];
        for (int i = 1; i < LANCZOS.length; i++) {
            sum += LANCZOS[i] / (x + i);
        }
        double t = x + 7.5;
        return 0.5 * StrictMath.log(2 * Math.PI) + (x + 0.5) * StrictMath.log(t) - t + StrictMath.log(sum);
    }
}
