package org.coursewright.bond.internal.laying;

import java.util.HashSet;
import java.util.Set;

import org.coursewright.bond.internal.run.Pattern;
import org.coursewright.bond.internal.run.RunShape;
import org.coursewright.bond.internal.stack.PatternPool;
import org.coursewright.bond.internal.stack.RunStack;
import org.coursewright.measure.Progress;

/** Adds to the pools of short runs the patterns there are with few cuts, all of them if they are not too many. */
final class CompletePools {

    /** Runs no longer than so many units are short. */
    private static final int SHORT = 6;
    /** In larger walls the tables of so many patterns take too long. */
    private static final int MOST_RUNS = 40;
    private static final int MOST_EXTRA = 1;
    private static final int PER_GAUGE = 12;
    private static final int MOST_PATTERNS = 400;

    private final RunStack stack;

    CompletePools(RunStack stack) {
        this.stack = stack;
    }

    /** @return whether a pool has grown */
    boolean complete(Progress progress) {
        if (stack.runs().size() > MOST_RUNS) {
            return false;
        }
        Set<RunShape> done = new HashSet<>();
        boolean grown = false;
        for (int run = 0; run < stack.runs().size(); run++) {
            progress.checkCancelled();
            PatternPool pool = stack.pool(run);
            if (pool.shape().length() <= SHORT * stack.masonry().whole() && done.add(pool.shape())) {
                grown |= complete(pool);
            }
        }
        return grown;
    }

    private static boolean complete(PatternPool pool) {
        boolean grown = false;
        for (int extra = 0; extra <= MOST_EXTRA; extra++) {
            int cuts = pool.leastCuts() + extra;
            for (Pattern pattern : pool.all(cuts, MOST_PATTERNS)
                    .orElseGet(() -> pool.some(cuts, PER_GAUGE, MOST_PATTERNS))) {
                grown |= pool.add(pattern);
            }
        }
        return grown;
    }
}
