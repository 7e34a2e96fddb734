package org.coursewright.takeoff.nesting.internal;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds the pattern of greatest value, exactly, by keeping for each item the states that no lighter one beats
 * (G. L. Nemhauser and Z. Ullmann, "Discrete dynamic programming and capital allocation", Management Science 15, 1969).
 */
final class Knapsack {

    private record State(long size, long value, State before, int item, long copies) {
    }

    private final Sizes sizes;
    private final long[] most;

    /** @param most how many pieces of each size a pattern may have */
    Knapsack(Sizes sizes, long[] most) {
        this.sizes = sizes;
        this.most = most.clone();
    }

    /** @param values of one piece of each size; a size without value is left out */
    int[] best(long[] values) {
        List<State> states = new ArrayList<>();
        states.add(new State(0, 0, null, -1, 0));
        for (int item = 0; item < sizes.count(); item++) {
            if (values[item] > 0) {
                states = withItem(states, item, values[item]);
            }
        }
        return pattern(states.get(states.size() - 1));
    }

    /** Takes 1, 2, 4 … copies and the rest, so that every number of copies can be put together. */
    private List<State> withItem(List<State> states, int item, long value) {
        List<State> all = states;
        long left = Math.min(most[item], sizes.capacity() / sizes.size(item));
        for (long copies = 1; left > 0; copies *= 2) {
            long taken = Math.min(copies, left);
            all = merged(all, item, taken, value);
            left -= taken;
        }
        return all;
    }

    private List<State> merged(List<State> states, int item, long copies, long value) {
        List<State> merged = new ArrayList<>(states.size() + 8);
        long size = copies * sizes.size(item);
        int old = 0;
        int shifted = 0;
        while (old < states.size() || shifted < states.size()) {
            boolean takeOld = old < states.size() && (shifted == states.size()
                    || states.get(old).size <= states.get(shifted).size + size);
            State before = states.get(takeOld ? old++ : shifted++);
            State next = takeOld
                    ? before
                    : new State(before.size + size, before.value + copies * value, before, item, copies);
            if (next.size <= sizes.capacity()) {
                addUnlessBeaten(merged, next);
            }
        }
        return merged;
    }

    private static void addUnlessBeaten(List<State> merged, State next) {
        int last = merged.size() - 1;
        if (last >= 0 && merged.get(last).value >= next.value) {
            return;
        }
        if (last >= 0 && merged.get(last).size == next.size) {
            merged.remove(last);
        }
        merged.add(next);
    }

    private int[] pattern(State best) {
        int[] pattern = new int[sizes.count()];
        for (State state = best; state.item >= 0; state = state.before) {
            pattern[state.item] += (int) state.copies;
        }
        return pattern;
    }
}
