package org.coursewright.bond.internal;

import java.util.List;

/** Lap violations between the patterns of two pools, as costs; counted once for every pair while the pools grow. */
final class LapTable {

    private final PatternPool below;
    private final PatternPool above;
    private final long offset;
    private final long lap;
    private long[] costs = new long[0];
    private int rows;
    private int columns;

    /** @param offset where the upper run begins, measured from the start of the lower */
    LapTable(PatternPool below, PatternPool above, long offset, long lap) {
        this.below = below;
        this.above = above;
        this.offset = offset;
        this.lap = lap;
    }

    /** By pattern of the lower run, then of the upper. */
    long[] costs() {
        List<Pattern> lower = below.patterns();
        List<Pattern> upper = above.patterns();
        if (lower.size() == rows && upper.size() == columns) {
            return costs;
        }
        long[] grown = new long[lower.size() * upper.size()];
        for (int row = 0; row < lower.size(); row++) {
            for (int column = 0; column < upper.size(); column++) {
                grown[row * upper.size() + column] = row < rows && column < columns
                        ? costs[row * columns + column]
                        : CostNetwork.cost(LapCheck.violations(lower.get(row), upper.get(column), offset, lap), 0, 0);
            }
        }
        costs = grown;
        rows = lower.size();
        columns = upper.size();
        return costs;
    }
}
