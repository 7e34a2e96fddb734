package org.coursewright.bond.internal.laying;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.coursewright.bond.internal.choice.WallCost;
import org.coursewright.bond.internal.lap.LapCheck;
import org.coursewright.bond.internal.run.Pattern;
import org.coursewright.bond.internal.stack.PatternPool;

/** Lap violations between the patterns of two pools; counted once for every pair while the pools grow. */
final class LapTable {

    private final PatternPool below;
    private final PatternPool above;
    private final long offset;
    private final long lap;
    private final int forced;
    private final Optional<LapTable> mirror;
    private byte[][] counts = new byte[0][];
    private int columns;
    private LapMarks rowMarks = new LapMarks(0, 0);
    private LapMarks columnMarks = new LapMarks(0, 0);

    /**
     * @param offset where the upper run begins, measured from the start of the lower
     * @param forced violations of every two patterns
     * @param mirror the table of the same pools one above the other the other way round, if there is one
     */
    LapTable(PatternPool below, PatternPool above, long offset, long lap, int forced, Optional<LapTable> mirror) {
        this.forced = forced;
        this.mirror = mirror;
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
        mirror.ifPresent(LapTable::grow);
        rowMarks = rowMarks.grown(lower.size(), upper.size());
        columnMarks = columnMarks.grown(upper.size(), lower.size());
        byte[][] grown = Arrays.copyOf(counts, lower.size());
        for (int row = 0; row < grown.length; row++) {
            int known = row < counts.length ? columns : 0;
            grown[row] = known == 0 ? new byte[upper.size()] : Arrays.copyOf(grown[row], upper.size());
            count(lower.get(row), row, known, grown[row]);
        }
        counts = grown;
        columns = upper.size();
    }

    private void count(Pattern pattern, int row, int from, byte[] found) {
        List<Pattern> upper = above.patterns();
        for (int column = from; column < found.length; column++) {
            int violations = mirror.isPresent()
                    ? mirror.get().counts[column][row]
                    : LapCheck.violations(pattern, upper.get(column), offset, lap, forced + LapMarks.MANY) - forced;
            found[column] = (byte) violations;
            if (violations > 0) {
                rowMarks.add(row, column, violations);
                columnMarks.add(column, row, violations);
            }
        }
    }

    /** As costs, by chosen pattern of the lower run, then of the upper. */
    long[] costs(int[] lower, int[] upper) {
        long[] costs = new long[lower.length * upper.length];
        int index = 0;
        for (int row : lower) {
            for (int column : upper) {
                costs[index++] = WallCost.of(forced + counts[row][column], 0, 0);
            }
        }
        return costs;
    }

    /** Whether one pattern has no more violations than another, whatever pattern of the other run lies beside. */
    boolean isWithin(boolean ofLower, int few, int many) {
        return (ofLower ? rowMarks : columnMarks).isWithin(few, many);
    }
}
