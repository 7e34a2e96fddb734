package org.coursewright.bond.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.coursewright.measure.Progress;

/**
 * A number of cuts that every layout of a wall needs that has no avoidable lap violation: what every run needs alone,
 * and what pairs of runs need beyond that, over pairs that share no run. Proven, not estimated.
 */
final class CutBound {

    private record Weighted(RunStack.Contact contact, int extra) {
    }

    private final RunStack stack;

    CutBound(RunStack stack) {
        this.stack = stack;
    }

    int prove(Progress progress) {
        PairBound pairs = new PairBound(stack.masonry());
        List<Weighted> weighted = new ArrayList<>();
        for (RunStack.Contact contact : stack.contacts()) {
            progress.checkCancelled();
            int extra = pairs.extra(stack.pool(contact.below()), stack.pool(contact.above()), contact.offset());
            if (extra > 0) {
                weighted.add(new Weighted(contact, extra));
            }
        }
        return stack.leastCuts() + matching(weighted);
    }

    /** Pairs that share no run, dear ones first, from the bottom up. */
    private int matching(List<Weighted> weighted) {
        weighted.sort(Comparator.comparingInt(pair -> -pair.extra));
        boolean[] taken = new boolean[stack.runs().size()];
        int sum = 0;
        for (Weighted pair : weighted) {
            if (!taken[pair.contact.below()] && !taken[pair.contact.above()]) {
                taken[pair.contact.below()] = true;
                taken[pair.contact.above()] = true;
                sum += pair.extra;
            }
        }
        return sum;
    }
}
