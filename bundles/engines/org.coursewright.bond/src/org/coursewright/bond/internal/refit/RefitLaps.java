package org.coursewright.bond.internal.refit;

import java.util.Arrays;

import org.coursewright.bond.internal.choice.WallCost;
import org.coursewright.bond.internal.lap.LapCheck;

/** Short laps between two runs one over the other, for every way to fill the one and the other; counted when asked for. */
final class RefitLaps {

    private final RefitWays below;
    private final RefitWays above;
    private final long offset;
    private final long lap;
    /** The count, or if it is only known to be no less than some number, that number's complement. */
    private final short[] counts;

    /** @param offset where the run above begins, measured from the start of the one below */
    RefitLaps(RefitWays below, RefitWays above, long offset, long lap) {
        this.below = below;
        this.above = above;
        this.offset = offset;
        this.lap = lap;
        counts = new short[below.count() * above.count()];
        Arrays.fill(counts, (short) ~0);
    }

    int at(int lower, int upper) {
        return at(lower, upper, Integer.MAX_VALUE);
    }

    /** The same, or {@code enough} or more if there are so many or more. */
    int at(int lower, int upper, int enough) {
        int index = lower * above.count() + upper;
        if (counts[index] < 0 && ~counts[index] < enough) {
            int count = LapCheck.violations(below.pattern(lower), above.pattern(upper), offset, lap, enough);
            counts[index] = (short) (count < enough ? count : ~count);
        }
        return counts[index] < 0 ? ~counts[index] : counts[index];
    }

    /** What short laps cost, all of them counted; the ways of the run above change fastest. */
    long[] costs() {
        long[] costs = new long[counts.length];
        for (int index = 0; index < costs.length; index++) {
            costs[index] = WallCost.of(at(index / above.count(), index % above.count()), 0, 0);
        }
        return costs;
    }
}
