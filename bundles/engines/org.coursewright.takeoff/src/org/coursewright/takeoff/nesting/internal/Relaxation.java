package org.coursewright.takeoff.nesting.internal;

import java.math.BigInteger;
import java.util.List;

import org.coursewright.takeoff.Fraction;

/**
 * What the linear relaxation tells: patterns with how often to use them, and a value for each piece such that no pattern
 * is worth more than {@code unitValue}. The pieces of any demand are then worth a number of units that no plan undercuts;
 * values are integers, so this bound holds exactly.
 */
final class Relaxation {

    private final List<int[]> patterns;
    private final double[] uses;
    private final long[] values;
    private final long unitValue;

    Relaxation(List<int[]> patterns, double[] uses, long[] values, long unitValue) {
        this.patterns = patterns.stream().map(int[]::clone).toList();
        this.uses = uses.clone();
        this.values = values.clone();
        this.unitValue = unitValue;
    }

    List<int[]> patterns() {
        return patterns;
    }

    double uses(int pattern) {
        return uses[pattern];
    }

    long valueOf(int[] pattern) {
        long value = 0;
        for (int item = 0; item < values.length; item++) {
            value += pattern[item] * values[item];
        }
        return value;
    }

    Fraction bound(long[] demand) {
        BigInteger worth = BigInteger.ZERO;
        for (int item = 0; item < values.length; item++) {
            worth = worth.add(BigInteger.valueOf(values[item]).multiply(BigInteger.valueOf(demand[item])));
        }
        return new Fraction(worth, BigInteger.valueOf(unitValue));
    }

    /** The same rounded up, for small demands whose worth fits. */
    long wholeBound(long[] demand) {
        return Math.floorDiv(worth(demand) + unitValue - 1, unitValue);
    }

    private long worth(long[] demand) {
        long worth = 0;
        for (int item = 0; item < values.length; item++) {
            worth = Math.addExact(worth, Math.multiplyExact(values[item], demand[item]));
        }
        return worth;
    }

    /**
     * @param demand pieces that are left
     * @param units how many units may be used
     * @return what the first pattern of any such plan is worth at least, so that the rest fits the other units
     */
    long leastWorth(long[] demand, long units) {
        return worth(demand) - unitValue * (units - 1);
    }

    long valueOfOne(int item) {
        return values[item];
    }
}
