package org.coursewright.bond.internal.laying;

import java.util.Arrays;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

import org.coursewright.bond.internal.choice.CostNetwork;
import org.coursewright.bond.internal.lap.LapCheck;
import org.coursewright.bond.internal.run.Pattern;
import org.coursewright.bond.internal.stack.PatternPool;
import org.coursewright.bond.internal.stack.RunStack;
import org.coursewright.measure.Progress;

/**
 * The patterns that cost least in their pools. Where they go together with none but the forced short laps, no other
 * choice is better; and to see that takes far fewer looks at two patterns than to weigh all of them.
 */
final class CheapestPatterns {

    private record Pair(PatternPool below, PatternPool above, long offset) {
    }

    private final RunStack stack;
    private final Map<PatternPool, int[]> cheapest = new IdentityHashMap<>();
    private final Map<Pair, long[]> clashes = new HashMap<>();

    CheapestPatterns(RunStack stack) {
        this.stack = stack;
    }

    /** By run, the index of the chosen pattern in its pool; empty if not all runs can have one of the cheapest. */
    Optional<int[]> choose(Progress progress) {
        long[][] own = new long[stack.runs().size()][];
        for (int run = 0; run < own.length; run++) {
            own[run] = new long[cheapest(stack.pool(run)).length];
        }
        CostNetwork network = new CostNetwork(own);
        for (RunStack.Contact contact : stack.contacts()) {
            progress.checkCancelled();
            long[] costs = clashes(contact);
            if (!hasNone(costs)) {
                return Optional.empty();
            }
            network.add(contact.below(), contact.above(), costs);
        }
        int[] chosen = network.solve(progress);
        if (stack.contacts().stream().anyMatch(contact -> clashes(contact)[chosen[contact.below()]
                * own[contact.above()].length + chosen[contact.above()]] > 0)) {
            return Optional.empty();
        }
        return Optional.of(IntStream.range(0, chosen.length)
                .map(run -> cheapest(stack.pool(run))[chosen[run]]).toArray());
    }

    private int[] cheapest(PatternPool pool) {
        return cheapest.computeIfAbsent(pool, each -> cheapest(each.patterns()));
    }

    private static int[] cheapest(List<Pattern> patterns) {
        int[] found = new int[patterns.size()];
        int count = 0;
        long least = Long.MAX_VALUE;
        for (int index = 0; index < found.length; index++) {
            long cost = patterns.get(index).cost();
            if (cost <= least) {
                count = cost < least ? 0 : count;
                least = cost;
                found[count++] = index;
            }
        }
        return Arrays.copyOf(found, count);
    }

    private static boolean hasNone(long[] costs) {
        for (long cost : costs) {
            if (cost == 0) {
                return true;
            }
        }
        return false;
    }

    /** By pattern of the lower run, then of the upper, one if there are more short laps than are forced. */
    private long[] clashes(RunStack.Contact contact) {
        Pair pair = new Pair(stack.pool(contact.below()), stack.pool(contact.above()), contact.offset());
        return clashes.computeIfAbsent(pair, each -> clashes(each, contact.forced()));
    }

    private long[] clashes(Pair pair, int forced) {
        int[] lower = cheapest(pair.below());
        int[] upper = cheapest(pair.above());
        long[] found = new long[lower.length * upper.length];
        int index = 0;
        for (int below : lower) {
            for (int above : upper) {
                int violations = LapCheck.violations(pair.below().patterns().get(below),
                        pair.above().patterns().get(above), pair.offset(), stack.masonry().lap(), forced + 1);
                found[index++] = violations > forced ? 1 : 0;
            }
        }
        return found;
    }
}
