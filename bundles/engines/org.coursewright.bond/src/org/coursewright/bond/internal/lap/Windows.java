package org.coursewright.bond.internal.lap;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

import org.coursewright.bond.internal.run.Pattern;

/**
 * Where no joint of a run may lie because a joint of a neighbouring course is too near: open intervals, relative to the
 * run's start, kept as exact fractions.
 */
public final class Windows {

    /**
     * The windows on the grid of a run with so many joints: whole numbers, exact for joints on that grid.
     *
     * @param lows where they begin, ascending
     * @param highs where each of them ends
     * @param furthest where the furthest of them and those before it ends
     */
    public record Grid(long[] lows, long[] highs, long[] furthest) {

        /** No windows. */
        public static final Grid NONE = Grid.of(new long[0], new long[0]);

        static Grid of(long[] lows, long[] highs) {
            long[] furthest = highs.clone();
            for (int window = 1; window < furthest.length; window++) {
                furthest[window] = Math.max(furthest[window], furthest[window - 1]);
            }
            return new Grid(lows, highs, furthest);
        }

        /** Whether the joint from {@code start} to {@code end} cuts into a window. */
        public boolean isMet(long start, long end) {
            int from = 0;
            int to = lows.length;
            while (from < to) {
                int middle = from + to >>> 1;
                if (lows[middle] < end) {
                    from = middle + 1;
                } else {
                    to = middle;
                }
            }
            return from > 0 && furthest[from - 1] > start;
        }

        /**
         * How many joints there is room for at most between the windows.
         *
         * @param width of a joint
         * @param apart from the start of a joint to the start of the next, at least
         * @param length of the run; all three times the number of joints
         */
        public long room(long width, long apart, long length) {
            long joints = 0;
            long from = 0;
            for (int window = 0; window < lows.length; window++) {
                joints += roomIn(lows[window] - from, width, apart);
                from = Math.max(from, highs[window]);
            }
            return joints + roomIn(length - from, width, apart);
        }

        private static long roomIn(long gap, long width, long apart) {
            return gap < width ? 0 : (gap - width) / apart + 1;
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
    public void add(Pattern pattern, long offset, long lap, long length) {
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
    public void add(long start, long end, long lap, long length) {
        if (end + lap > 0 && start - lap < length && end + lap > start - lap) {
            add(start - lap, end + lap, 1);
            grids.clear();
        }
    }

    /** Whether the window added last lies in the second half of a run of that length. */
    public boolean isLastLate(long length) {
        return size > 0 && lows[size - 1] + highs[size - 1] > length * parts[size - 1];
    }

    /** The windows as they look from the end of a run of that length. */
    public Windows turned(long length) {
        Windows turned = new Windows();
        for (int window = size - 1; window >= 0; window--) {
            turned.add(length * parts[window] - highs[window], length * parts[window] - lows[window], parts[window]);
        }
        return turned;
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
    public Grid grid(int joints) {
        return grids.computeIfAbsent(joints, this::scaled);
    }

    private Grid scaled(int joints) {
        long[] low = new long[size];
        long[] high = new long[size];
        for (int window = 0; window < size; window++) {
            insert(low, high, window, Math.floorDiv(lows[window] * joints, parts[window]),
                    -Math.floorDiv(-highs[window] * joints, parts[window]));
        }
        return Grid.of(low, high);
    }

    /** Windows come in long ascending stretches, so few have to move. */
    private static void insert(long[] lows, long[] highs, int count, long low, long high) {
        int place = count;
        while (place > 0 && lows[place - 1] > low) {
            lows[place] = lows[place - 1];
            highs[place] = highs[place - 1];
            place--;
        }
        lows[place] = low;
        highs[place] = high;
    }
}
