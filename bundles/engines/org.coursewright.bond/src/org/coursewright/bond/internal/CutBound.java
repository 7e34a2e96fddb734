package org.coursewright.bond.internal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.coursewright.measure.Progress;

/**
 * A number of cuts that every layout of a wall needs that has no avoidable lap violation. In every layout every run is
 * filled by one of its choices; some choices of a run are excluded by joints that are there however its neighbours are
 * filled, some of two runs exclude one another. The least sum of cuts that nothing excludes is a bound, because every
 * layout is among what is minimised over.
 */
final class CutBound {

    private record Place(RunShape shape, List<Long> joints) {
    }

    private final RunStack stack;
    private final PairBound pairs;
    private final int cuts;
    private final List<RunChoice> chosen = new ArrayList<>();
    private final Map<Place, Integer> leastExtra = new HashMap<>();

    /** Also adds to the pools, for pairs of runs, patterns that go together with few cuts. */
    CutBound(RunStack stack, Progress progress) {
        this.stack = stack;
        pairs = new PairBound(stack);
        cuts = prove(progress);
    }

    /** The number of cuts. */
    int cuts() {
        return cuts;
    }

    private int prove(Progress progress) {
        CostNetwork network = new CostNetwork(extraCuts(progress));
        Map<boolean[], long[]> tables = new HashMap<>();
        for (RunStack.Contact contact : stack.contacts()) {
            progress.checkCancelled();
            boolean[] excluded = pairs.excluded(contact);
            network.add(contact.below(), contact.above(), tables.computeIfAbsent(excluded, CutBound::costs));
        }
        int[] values = network.solve(progress);
        int extra = 0;
        for (int run = 0; run < values.length; run++) {
            chosen.add(pairs.choices(stack.pool(run)).get(values[run]));
            extra += chosen.get(run).extra();
        }
        return stack.leastCuts() + (network.isExact() ? extra : 0);
    }

    /** By run what the bound is made of; often all of it can be had at once. */
    List<RunChoice> chosen() {
        return chosen;
    }

    private long[][] extraCuts(Progress progress) {
        long[][] own = new long[stack.runs().size()][];
        Map<List<Object>, long[]> known = new HashMap<>();
        for (int run = 0; run < own.length; run++) {
            progress.checkCancelled();
            int least = leastExtra(run);
            List<RunChoice> choices = pairs.choices(stack.pool(run));
            own[run] = known.computeIfAbsent(List.of(stack.pool(run).shape(), least),
                    key -> extraCuts(choices, least));
        }
        return own;
    }

    private int leastExtra(int run) {
        Skeleton skeleton = stack.skeleton();
        List<Long> joints = skeleton.joints(run);
        return joints.isEmpty()
                ? 0
                : leastExtra.computeIfAbsent(new Place(stack.pool(run).shape(), joints),
                        place -> stack.pool(run).extraCuts(skeleton.certain(run), skeleton.forced(run),
                                RunChoice.MOST_EXTRA));
    }

    /** What is excluded costs more than any number of cuts. */
    private static long[] extraCuts(List<RunChoice> choices, int least) {
        return choices.stream()
                .mapToLong(choice -> CostNetwork.cost(choice.extra() < least ? 1 : 0, choice.extra(), 0)).toArray();
    }

    private static long[] costs(boolean[] excluded) {
        long[] costs = new long[excluded.length];
        for (int index = 0; index < costs.length; index++) {
            costs[index] = CostNetwork.cost(excluded[index] ? 1 : 0, 0, 0);
        }
        return costs;
    }
}
