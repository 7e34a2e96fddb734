package org.coursewright.takeoff.range;

import java.util.function.DoubleUnaryOperator;

import org.coursewright.takeoff.range.internal.StandardNormal;

/**
 * The triangular distribution on three points.
 *
 * @param low least value
 * @param mode likeliest value, from low to high
 * @param high greatest value
 */
public record Triangular(double low, double mode, double high) implements Spread {

    public Triangular {
        Bounds.requireRising(low, mode, high);
    }

    @Override
    public double mean() {
        return (low + mode + high) / 3;
    }

    @Override
    public double variance() {
        double left = mode - low;
        double right = high - mode;
        return (left * left + left * right + right * right) / 18;
    }

    @Override
    public DoubleUnaryOperator fromNormal() {
        double width = high - low;
        double left = mode - low;
        double belowMode = width == 0 ? 0 : left / width;
        DoubleUnaryOperator cumulative = StandardNormal.table();
        return normal -> {
            // the tail that is at hand is looked up, so that both ends are equally exact
            double share = cumulative.applyAsDouble(normal);
            return share < belowMode
                    ? low + Math.sqrt(share * width * left)
                    : high - Math.sqrt(cumulative.applyAsDouble(-normal) * width * (width - left));
        };
    }

    @Override
    public Spread times(double factor) {
        return new Triangular(low * factor, mode * factor, high * factor);
    }
}
