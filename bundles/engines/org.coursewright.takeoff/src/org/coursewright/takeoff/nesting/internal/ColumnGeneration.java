package org.coursewright.takeoff.nesting.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.coursewright.measure.Progress;

/**
 * Solves the relaxation of Gilmore and Gomory: a revised simplex method that asks the knapsack for the pattern worth most
 * at present values until none is worth more than a unit. Floating point only steers; see {@link Relaxation}.
 */
final class ColumnGeneration {

    /** Values are counted in this part of a unit; divisible by all numbers up to 16, so that common values are exact. */
    private static final long UNIT = 720_720L << 20;
    private static final double TOLERANCE = 1e-9;

    private final Sizes sizes;
    private final Knapsack knapsack;
    private final double[][] inverse;
    private final double[] uses;
    private final List<int[]> basis = new ArrayList<>();

    /** @param demand of each size, zero or more */
    ColumnGeneration(Sizes sizes, long[] demand) {
        this.sizes = sizes;
        knapsack = new Knapsack(sizes, demand);
        int count = sizes.count();
        inverse = new double[count][count];
        uses = new double[count];
        for (int item = 0; item < count; item++) {
            int[] pattern = new int[count];
            pattern[item] = (int) Math.max(1, Math.min(demand[item], sizes.capacity() / sizes.size(item)));
            basis.add(pattern);
            inverse[item][item] = 1.0 / pattern[item];
            uses[item] = (double) demand[item] / pattern[item];
        }
    }

    Relaxation solve(Progress progress) {
        int steps = 1000 + 50 * sizes.count();
        while (true) {
            progress.checkCancelled();
            long[] values = values();
            int[] best = knapsack.best(values);
            long unitValue = worth(best, values);
            if (unitValue <= UNIT + UNIT * TOLERANCE || steps-- == 0 || !enter(best)) {
                return new Relaxation(basis, uses, values, unitValue);
            }
        }
    }

    private long[] values() {
        long[] values = new long[sizes.count()];
        for (int item = 0; item < values.length; item++) {
            double value = 0;
            for (double[] row : inverse) {
                value += row[item];
            }
            values[item] = Math.max(0, Math.round(value * UNIT));
        }
        return values;
    }

    private static long worth(int[] pattern, long[] values) {
        long worth = 0;
        for (int item = 0; item < values.length; item++) {
            worth += pattern[item] * values[item];
        }
        return worth;
    }

    /** @return whether some pattern of the basis could leave for this one */
    private boolean enter(int[] pattern) {
        double[] column = Arrays.stream(inverse).mapToDouble(row -> product(row, pattern)).toArray();
        int leaving = leaving(column);
        if (leaving < 0) {
            return false;
        }
        double pivot = column[leaving];
        scale(inverse[leaving], 1 / pivot);
        uses[leaving] /= pivot;
        for (int row = 0; row < uses.length; row++) {
            if (row != leaving && column[row] != 0) {
                subtract(inverse[row], inverse[leaving], column[row]);
                uses[row] = Math.max(0, uses[row] - column[row] * uses[leaving]);
            }
        }
        basis.set(leaving, pattern);
        return true;
    }

    private int leaving(double[] column) {
        int leaving = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int row = 0; row < column.length; row++) {
            if (column[row] > TOLERANCE && uses[row] / column[row] < least) {
                least = uses[row] / column[row];
                leaving = row;
            }
        }
        return leaving;
    }

    private static double product(double[] row, int[] pattern) {
        double product = 0;
        for (int item = 0; item < row.length; item++) {
            product += row[item] * pattern[item];
        }
        return product;
    }

    private static void scale(double[] row, double factor) {
        for (int item = 0; item < row.length; item++) {
            row[item] *= factor;
        }
    }

    private static void subtract(double[] row, double[] other, double factor) {
        for (int item = 0; item < row.length; item++) {
            row[item] -= factor * other[item];
        }
    }
}
