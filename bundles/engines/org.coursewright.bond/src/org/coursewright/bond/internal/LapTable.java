package org.coursewright.bond.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Lap violations between the patterns of two pools; counted once for every pair while the pools grow. */
final class LapTable {

    /** Two patterns with so many violations beyond the forced are no better than with more. */
    private static final int MANY = 3;

    private final PatternPool below;
    private final PatternPool above;
    private final long offset;
    private final long lap;
    private final int forced;
    private byte[][] counts = new byte[0][];
    private int columns;
    private final List<Marks> rowMarks = new ArrayList<>();
    private final List<Marks> columnMarks = new ArrayList<>();

    /** By number of violations beyond the forced: the others that a pattern has so many with, or more. */
    private static final class Marks {
        private final long[][] bits = new long[MANY][1];

        void add(int other, int violations) {
            for (int level = 0; level < violations; level++) {
                if (bits[level].length <= other >> 6) {
                    bits[level] = Arrays.copyOf(bits[level], (other >> 6) + 1);
                }
                BitRow.set(bits[level], 0, other);
            }
        }

        boolean isWithin(Marks many) {
            for (int level = 0; level < MANY; level++) {
                if (!isWithin(bits[level], many.bits[level])) {
                    return false;
                }
            }
            return true;
        }

        private static boolean isWithin(long[] few, long[] many) {
            for (int word = 0; word < few.length; word++) {
                if ((few[word] & ~(word < many.length ? many[word] : 0)) != 0) {
                    return false;
                }
            }
            return true;
        }
    }

    /**
     * @param offset where the upper run begins, measured from the start of the lower
     * @param forced violations of every two patterns
     */
    LapTable(PatternPool below, PatternPool above, long offset, long lap, int forced) {
        this.forced = forced;
        this.below = below;
        this.above = above;
        this.offset = offset;
        this.lap = lap;
    }

    /** Counts what patterns that the pools have got since then make. */
    void grow() {
        List<Pattern> lower = below.patterns();
        List<Pattern> upper = above.patterns();
        if (lower.size() == counts.length && upper.size() == columns) {
            return;
        }
        byte[][] grown = Arrays.copyOf(counts, lower.size());
        for (int row = 0; row < grown.length; row++) {
            int known = row < counts.length ? columns : 0;
            grown[row] = known == 0 ? new byte[upper.size()] : Arrays.copyOf(grown[row], upper.size());
            for (int column = known; column < upper.size(); column++) {
                int violations = LapCheck.violations(lower.get(row), upper.get(column), offset, lap, forced + MANY)
                        - forced;
                grown[row][column] = (byte) violations;
                marks(rowMarks, row).add(column, violations);
                marks(columnMarks, column).add(row, violations);
            }
        }
        counts = grown;
        columns = upper.size();
    }

    private static Marks marks(List<Marks> all, int index) {
        while (all.size() <= index) {
            all.add(new Marks());
        }
        return all.get(index);
    }

    /** As costs, by chosen pattern of the lower run, then of the upper. */
    long[] costs(int[] lower, int[] upper) {
        long[] costs = new long[lower.length * upper.length];
        int index = 0;
        for (int row : lower) {
            for (int column : upper) {
                costs[index++] = CostNetwork.cost(forced + counts[row][column], 0, 0);
            }
        }
        return costs;
    }

    /** Whether one pattern has no more violations than another, whatever pattern of the other run lies beside. */
    boolean isWithin(boolean ofLower, int few, int many) {
        List<Marks> marks = ofLower ? rowMarks : columnMarks;
        return marks.get(few).isWithin(marks.get(many));
    }
}
