package org.coursewright.bond.internal.refit;

import java.util.Optional;
import java.util.function.IntUnaryOperator;

import org.coursewright.bond.internal.choice.WallCost;

/** A run and the way chosen to fill it. */
final class RefitRun {

    private static final long SHORT_LAP = WallCost.of(1, 0, 0);

    private final RefitWays ways;
    private final long[] costs;
    private Optional<RefitRun> below = Optional.empty();
    private Optional<RefitLaps> lapsBelow = Optional.empty();
    private boolean covered;
    /** By way the best way to fill the run below. */
    private int[] bestBelow = {};
    private int chosen;

    RefitRun(RefitWays ways) {
        this.ways = ways;
        costs = ways.costs();
    }

    RefitWays ways() {
        return ways;
    }

    boolean isOpen() {
        return costs.length > 1;
    }

    long[] costs() {
        return costs;
    }

    int chosen() {
        return chosen;
    }

    void choose(int way) {
        chosen = way;
    }

    RefitWays filled() {
        return ways.only(chosen);
    }

    /** Adds what every way laps too little with a run that is filled already. */
    void add(IntUnaryOperator laps) {
        for (int way = 0; way < costs.length; way++) {
            costs[way] += laps.applyAsInt(way) * SHORT_LAP;
        }
    }

    /** @return whether this is the only open run on the other, and that the only one under this */
    boolean liesOn(RefitRun other, RefitLaps laps) {
        boolean alone = below.isEmpty() && !other.covered;
        below = Optional.of(other);
        lapsBelow = Optional.of(laps);
        other.covered = true;
        return alone;
    }

    /** Adds to every way what it costs with the best way to fill the run below, that having been done there. */
    void accumulate() {
        if (below.isEmpty()) {
            return;
        }
        long[] lower = below.get().costs;
        RefitLaps laps = lapsBelow.orElseThrow();
        int[] order = ascending(lower);
        bestBelow = new int[costs.length];
        for (int way = 0; way < costs.length; way++) {
            long least = Long.MAX_VALUE;
            for (int index = 0; index < order.length && lower[order[index]] < least; index++) {
                int room = (int) Math.min(Integer.MAX_VALUE - 1, (least - lower[order[index]]) / SHORT_LAP);
                long cost = lower[order[index]] + laps.at(order[index], way, room + 1) * SHORT_LAP;
                if (cost < least) {
                    least = cost;
                    bestBelow[way] = order[index];
                }
            }
            costs[way] += least;
        }
    }

    /** By insertion, for there are few. */
    private static int[] ascending(long[] costs) {
        int[] order = new int[costs.length];
        for (int index = 0; index < order.length; index++) {
            int at = index;
            while (at > 0 && costs[order[at - 1]] > costs[index]) {
                order[at] = order[at - 1];
                at--;
            }
            order[at] = index;
        }
        return order;
    }

    /** Chooses the best way unless a run above has chosen already, and for the run below what goes best with it. */
    void choose() {
        if (!covered) {
            chosen = ascending(costs)[0];
        }
        below.ifPresent(run -> run.chosen = bestBelow[chosen]);
    }
}
