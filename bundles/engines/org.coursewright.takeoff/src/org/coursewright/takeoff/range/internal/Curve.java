package org.coursewright.takeoff.range.internal;

import java.util.function.DoubleUnaryOperator;

/**
 * A smooth function of a standard normal value, known by value and slope at steps of 1/32 from -8 to 8, and cubic between
 * them. Beyond, where one draw in 10^15 falls, it stays at its last value.
 */
final class Curve implements DoubleUnaryOperator {

    static final double FIRST = -8;
    static final int STEPS_PER_UNIT = 32;
    static final int POINTS = 2 * 8 * STEPS_PER_UNIT + 1;

    private final double[] values;
    private final double[] slopes;

    /** @param slopes by unit of the normal value */
    Curve(double[] values, double[] slopes) {
        this.values = values.clone();
        this.slopes = slopes.clone();
    }

    static double normalAt(int point) {
        return FIRST + (double) point / STEPS_PER_UNIT;
    }

    @Override
    public double applyAsDouble(double normal) {
        double position = (normal - FIRST) * STEPS_PER_UNIT;
        if (position <= 0) {
            return values[0];
        }
        if (position >= POINTS - 1) {
            return values[POINTS - 1];
        }
        int left = (int) position;
        double t = position - left;
        double rise = values[left + 1] - values[left];
        double start = slopes[left] / STEPS_PER_UNIT - rise;
        double end = rise - slopes[left + 1] / STEPS_PER_UNIT;
        return values[left] + t * (rise + (1 - t) * (start * (1 - t) + end * t));
    }
}
