package org.coursewright.bond.internal;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * Where no joint of a run may lie because a joint of a neighbouring course is too near: open intervals, relative to the
 * run's start, kept as exact fractions.
 */
final class Windows {

    /** The windows on the grid of a run with so many joints: whole numbers, exact for joints on that grid. */
    record Grid(long[] lows, long[] highs) {

        /** How many windows the joint [{@code start}, {@code end}] cuts into. */
        int count(long start, long end) {
            return below(lows, end) - below(highs, start + 1);
        }

        /** Number of values less than {@code limit}. */
        private static int below(long[] sorted, long limit) {
            int low = 0;
            int high = sorted.length;
            while (low < high) {
                int middle = (low + high) >>> 1;
                if (sorted[middle] < limit) {
                    low = middle + 1;
                } else {
                    high = middle;
                }
            }
            return low;
        }
    }

    private long[] lows = new long[16];
    private long[] highs = new long[16];
    private long[] parts = new long[16];
    private int size;
    private final Map<Integer, Grid> grids = new HashMap<>();

    /**
     * Adds the windows round the joints of a pattern.
     *
     * @param offset where its run begins, measured from the start of the run to be filled
     * @param length length of the run to be filled; windows outside are left out
     */
    void add(Pattern pattern, long offset, long lap, long length) {
        long m = pattern.joints();
        for (int joint = 0; joint < m; joint++) {
            long low = pattern.jointStart(joint) + (offset - lap) * m;
            long high = pattern.jointStart(joint) + pattern.jointTotal() + (offset + lap) * m;
            if (high > 0 && low < length * m && low < high) {
                add(low, high, m);
            }
        }
        grids.clear();
    }

    /** Adds the window round a joint from {@code start} to {@code end}, whole positions from the start of the run. */
    void add(long start, long end, long lap, long length) {
        if (end + lap > 0 && start - lap < length && end + lap > start - lap) {
            add(start - lap, end + lap, 1);
            grids.clear();
        }
    }

    private void add(long low, long high, long part) {
        if (size == lows.length) {
            lows = Arrays.copyOf(lows, 2 * size);
            highs = Arrays.copyOf(highs, 2 * size);
            parts = Arrays.copyOf(parts, 2 * size);
        }
        lows[size] = low;
        highs[size] = high;
        parts[size++] = part;
    }

    /** The windows times {@code joints}: a joint on that grid cuts into a window exactly if it does so here. */
    Grid grid(int joints) {
        return grids.computeIfAbsent(joints, this::scaled);
    }

    private Grid scaled(int joints) {
        long[] low = new long[size];
        long[] high = new long[size];
        for (int window = 0; window < size; window++) {
            low[window] = Math.floorDiv(lows[window] * joints, parts[window]);
            high[window] = -Math.floorDiv(-highs[window] * joints, parts[window]);
        }
        Arrays.sort(low);
        Arrays.sort(high);
        return new Grid(low, high);
    }
}
