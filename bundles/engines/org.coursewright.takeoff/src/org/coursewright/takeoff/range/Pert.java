package org.coursewright.takeoff.range;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import java.util.function.DoubleUnaryOperator;

import org.coursewright.takeoff.range.internal.Beta;

/**
 * The PERT distribution: a beta distribution on three points, whose mean weighs the likeliest value {@code weight} times
 * (D. G. Malcolm and others, "Application of a technique for research and development program evaluation", Operations
 * Research 7, 1959, with a weight of 4). Its variance is the exact one of the beta distribution; the rule ((high − low) ÷ 6)²
 * is an approximation of it.
 *
 * @param low least value
 * @param mode likeliest value, from low to high
 * @param high greatest value
 * @param weight of the likeliest value, greater than zero
 */
public record Pert(double low, double mode, double high, double weight) implements Spread {

    public Pert {
        Bounds.requireRising(low, mode, high);
        require(weight > 0 && Double.isFinite(weight), "The likeliest value weighs %s: give more than zero.", weight);
    }

    /** @return the usual one, with a weight of 4 */
    public static Pert of(double low, double mode, double high) {
        return new Pert(low, mode, high, 4);
    }

    @Override
    public double mean() {
        return (low + weight * mode + high) / (weight + 2);
    }

    @Override
    public double variance() {
        return (mean() - low) * (high - mean()) / (weight + 3);
    }

    @Override
    public DoubleUnaryOperator fromNormal() {
        double width = high - low;
        if (width == 0) {
            return normal -> low;
        }
        Beta beta = new Beta(1 + weight * (mode - low) / width, 1 + weight * (high - mode) / width);
        DoubleUnaryOperator share = beta.fromNormal();
        return normal -> low + width * share.applyAsDouble(normal);
    }

    @Override
    public Spread times(double factor) {
        return new Pert(low * factor, mode * factor, high * factor, weight);
    }
}
