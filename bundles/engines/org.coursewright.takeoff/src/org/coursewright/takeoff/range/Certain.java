package org.coursewright.takeoff.range;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import java.util.function.DoubleUnaryOperator;

/**
 * An amount that is known.
 *
 * @param value finite
 */
public record Certain(double value) implements Spread {

    public Certain {
        require(Double.isFinite(value), "An amount of %s is not a number that can be summed up: correct it.", value);
    }

    @Override
    public double mean() {
        return value;
    }

    @Override
    public double variance() {
        return 0;
    }

    @Override
    public DoubleUnaryOperator fromNormal() {
        return normal -> value;
    }

    @Override
    public Spread times(double factor) {
        return new Certain(value * factor);
    }
}
