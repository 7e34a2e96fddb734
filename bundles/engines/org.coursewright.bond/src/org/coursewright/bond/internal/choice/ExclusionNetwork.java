package org.coursewright.bond.internal.choice;

import java.util.ArrayList;
import java.util.List;

import org.coursewright.measure.Progress;

/**
 * Choices of runs with what each costs and which exclude one another; finds those with the least sum that do not. Before
 * they are eliminated, choices are left out for which another is no dearer and is excluded by no more: that loses
 * nothing, and leaves few as long as little is known to be excluded.
 */
public final class ExclusionNetwork {

    /** Larger tables of what is left are left aside; the sum is then a bound still. */
    private static final int MOST_COMBINATIONS = 20_000;
    /** To leave out choices of one run may make others needless. */
    private static final int PASSES = 4;

    private record Scoped(int[] scope, Exclusions exclusions) {
    }

    private final long[][] own;
    private final UndominatedChoices undominated;
    private final TableAlgebra algebra;
    private final long mostWork;
    private final int[][] left;
    private List<Scoped> scoped = new ArrayList<>();
    private boolean exact;

    /**
     * @param own by run, the cost of each choice
     * @param mostWork values looked at to eliminate a run; where it would be more, the sum is not exact
     */
    public ExclusionNetwork(long[][] own, UndominatedChoices undominated, TableAlgebra algebra, long mostWork) {
        this.own = own;
        this.undominated = undominated;
        this.algebra = algebra;
        this.mostWork = mostWork;
        left = new int[own.length][];
    }

    /** @param scope the runs, ascending */
    public void add(int[] scope, Exclusions exclusions) {
        if (exclusions.count() > 0) {
            scoped.add(new Scoped(scope, exclusions));
        }
    }

    /** @return the index of the choice of every run */
    public int[] solve(Progress progress) {
        undominated.begin();
        for (int pass = 0; pass < PASSES && leaveOut(); pass++) {
            progress.checkCancelled();
        }
        CostNetwork network = new CostNetwork(own, algebra, mostWork);
        for (Scoped each : scoped) {
            if (each.exclusions().combinations() <= MOST_COMBINATIONS) {
                network.add(each.exclusions().costs(each.scope()));
            }
        }
        int[] chosen = network.solve(progress);
        exact = network.isExact();
        for (int run = 0; run < chosen.length; run++) {
            chosen[run] = left[run] == null ? chosen[run] : left[run][chosen[run]];
        }
        return chosen;
    }

    /** Whether what {@link #solve} gave costs no more than any choices that do not exclude one another. */
    public boolean isExact() {
        return exact;
    }

    /** @return whether anything has been left out */
    private boolean leaveOut() {
        List<List<UndominatedChoices.Side>> sides = new ArrayList<>();
        for (int run = 0; run < own.length; run++) {
            sides.add(new ArrayList<>());
        }
        for (Scoped each : scoped) {
            for (int place = 0; place < each.scope().length; place++) {
                sides.get(each.scope()[place]).add(new UndominatedChoices.Side(each.exclusions(), place));
            }
        }
        int[][] kept = new int[own.length][];
        boolean any = false;
        for (int run = 0; run < own.length; run++) {
            kept[run] = undominated.find(own[run], sides.get(run));
            if (kept[run].length < own[run].length) {
                any = true;
                left[run] = left[run] == null ? kept[run] : undominated.among(left[run], kept[run]);
                own[run] = undominated.among(own[run], kept[run]);
            }
        }
        if (any) {
            keep(kept);
        }
        return any;
    }

    private void keep(int[][] kept) {
        List<Scoped> now = new ArrayList<>();
        for (Scoped each : scoped) {
            List<int[]> choices = new ArrayList<>();
            for (int run : each.scope()) {
                choices.add(kept[run]);
            }
            Exclusions among = undominated.among(each.exclusions(), choices);
            if (among.count() > 0) {
                now.add(new Scoped(each.scope(), among));
            }
        }
        scoped = now;
    }
}
