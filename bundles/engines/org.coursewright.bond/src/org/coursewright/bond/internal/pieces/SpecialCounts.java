package org.coursewright.bond.internal.pieces;

import java.util.ArrayList;
import java.util.List;

import org.coursewright.bond.internal.run.Masonry;

/** How many of each special a run may hold, few specials first. */
final class SpecialCounts {

    /** More combinations than this are not looked at. */
    static final int MOST = 2_000;

    private final Masonry masonry;
    private final long length;
    private final List<int[]> counts = new ArrayList<>();
    private boolean complete = true;

    private SpecialCounts(Masonry masonry, long length) {
        this.masonry = masonry;
        this.length = length;
    }

    /** Combinations that fit into {@code length}, at most {@code most} specials in each. */
    static SpecialCounts upTo(int most, Masonry masonry, long length) {
        SpecialCounts result = new SpecialCounts(masonry, length);
        int kinds = masonry.specials().size();
        for (int total = 0; total <= (kinds == 0 ? 0 : most) && result.complete; total++) {
            int before = result.counts.size();
            result.add(new int[kinds], 0, total, 0);
            if (result.counts.size() == before) {
                break;
            }
        }
        return result;
    }

    List<int[]> counts() {
        return counts;
    }

    /** Whether no combination was left out for there being too many. */
    boolean isComplete() {
        return complete;
    }

    private void add(int[] chosen, int kind, int left, long used) {
        if (used > length + masonry.least() || !complete) {
            return;
        }
        if (left == 0) {
            complete = counts.size() < MOST;
            if (complete) {
                counts.add(chosen.clone());
            }
            return;
        }
        if (kind == chosen.length) {
            return;
        }
        for (int count = left; count >= 0; count--) {
            chosen[kind] = count;
            add(chosen, kind + 1, left - count, used + count * (masonry.specials().get(kind) + masonry.least()));
        }
        chosen[kind] = 0;
    }
}
