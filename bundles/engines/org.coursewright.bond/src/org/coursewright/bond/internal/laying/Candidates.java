package org.coursewright.bond.internal.laying;

import java.util.Arrays;
import java.util.List;

import org.coursewright.bond.internal.run.Pattern;
import org.coursewright.bond.internal.stack.PatternPool;

/**
 * The patterns of a run that come into question: those for which no other is cheaper and goes together with all they go
 * together with. To leave out the rest loses nothing, and the fewer there are the faster all runs are chosen.
 */
final class Candidates {

    /** Bits of an index, put below the cost to sort by both; costs stay apart up to 65,535 cuts in a run. */
    private static final int INDEX = 17;

    /** What lies above or below a run. */
    record Side(LapTable table, boolean isLower) {
    }

    private final List<Pattern> patterns;
    private final List<Side> sides;

    Candidates(PatternPool pool, List<Side> sides) {
        patterns = pool.patterns();
        this.sides = sides;
    }

    /** Their indexes in the pool, ascending; one at least. */
    int[] find() {
        sides.forEach(side -> side.table().grow());
        long[] order = new long[patterns.size()];
        Arrays.setAll(order, index -> patterns.get(index).cost() << INDEX | index);
        Arrays.sort(order);
        int[] kept = new int[order.length];
        int count = 0;
        for (long each : order) {
            int pattern = (int) (each & (1 << INDEX) - 1);
            if (!isDominated(pattern, kept, count)) {
                kept[count++] = pattern;
            }
        }
        int[] found = Arrays.copyOf(kept, count);
        Arrays.sort(found);
        return found;
    }

    private boolean isDominated(int pattern, int[] kept, int count) {
        for (int index = 0; index < count; index++) {
            if (isWithin(kept[index], pattern)) {
                return true;
            }
        }
        return false;
    }

    private boolean isWithin(int few, int many) {
        for (Side side : sides) {
            if (!side.table().isWithin(side.isLower(), few, many)) {
                return false;
            }
        }
        return true;
    }
}
