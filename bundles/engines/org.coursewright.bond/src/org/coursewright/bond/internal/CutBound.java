package org.coursewright.bond.internal;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

import org.coursewright.measure.Progress;

/**
 * A number of cuts that every layout of a wall needs that has no avoidable lap violation. Every layout gives every run
 * its least cuts and none, one or more extra; pairs of runs exclude some of these numbers together. The least sum that no
 * pair excludes is a bound, because every layout is among what is minimised over.
 */
final class CutBound {

    private final RunStack stack;
    private final PairBound pairs;

    CutBound(RunStack stack) {
        this.stack = stack;
        pairs = new PairBound(stack.masonry());
    }

    /** Also adds to the pools, for pairs of runs, patterns that go together with few cuts. */
    int prove(Progress progress) {
        Map<boolean[], long[]> tables = new HashMap<>();
        CostNetwork network = new CostNetwork(extraCuts());
        for (RunStack.Contact contact : stack.contacts()) {
            progress.checkCancelled();
            boolean[] excluded = pairs.excluded(stack.pool(contact.below()), stack.pool(contact.above()),
                    contact.offset());
            if (excluded[0]) {
                network.add(contact.below(), contact.above(), tables.computeIfAbsent(excluded, CutBound::costs));
            }
        }
        int extra = Arrays.stream(network.solve(progress)).sum();
        return stack.leastCuts() + (network.isExact() ? extra : 0);
    }

    /** Extra cuts cost what they are. */
    private long[][] extraCuts() {
        long[] own = new long[PairBound.LEVELS];
        for (int extra = 0; extra < own.length; extra++) {
            own[extra] = CostNetwork.cost(0, extra, 0);
        }
        long[][] all = new long[stack.runs().size()][];
        Arrays.fill(all, own);
        return all;
    }

    /** What is excluded costs more than any number of cuts. */
    private static long[] costs(boolean[] excluded) {
        long[] costs = new long[excluded.length];
        for (int index = 0; index < costs.length; index++) {
            costs[index] = CostNetwork.cost(excluded[index] ? 1 : 0, 0, 0);
        }
        return costs;
    }
}
