package org.coursewright.bond.internal.proof;

import java.util.List;
import java.util.Optional;

import org.coursewright.bond.internal.stack.RunStack;

/**
 * Other choices that cost as much and rest on nothing known to be excluded: run after run, another that goes with its
 * neighbours as they are. That is much sooner done than to take the least sum again, and often enough.
 */
final class NearbyChoices {

    private static final int SWEEPS = 3;

    private final RunStack stack;
    private final PairBound pairs;
    private final StarBound stars;
    private final int[] leastExtra;

    /** @param leastExtra by run, the fewest extra cuts that are not excluded by the joints round it */
    NearbyChoices(RunStack stack, PairBound pairs, StarBound stars, int[] leastExtra) {
        this.stack = stack;
        this.pairs = pairs;
        this.stars = stars;
        this.leastExtra = leastExtra;
    }

    /**
     * Changes choices of as many extra cuts.
     *
     * @param values the index of the choice of every run
     * @return empty if none are found
     */
    Optional<int[]> find(int[] values) {
        int[] now = values.clone();
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            boolean all = true;
            for (int run = 0; run < now.length; run++) {
                all &= !isExcluded(run, now) || move(run, now);
            }
            if (all) {
                return Optional.of(now);
            }
        }
        return Optional.empty();
    }

    private boolean move(int run, int[] now) {
        int before = now[run];
        List<RunChoice> choices = pairs.choices(stack.pool(run));
        for (int value = 0; value < choices.size(); value++) {
            now[run] = value;
            if (choices.get(value).extra() <= choices.get(before).extra() && !isExcluded(run, now)) {
                return true;
            }
        }
        now[run] = before;
        return false;
    }

    private boolean isExcluded(int run, int[] now) {
        if (pairs.choices(stack.pool(run)).get(now[run]).extra() < leastExtra[run]) {
            return true;
        }
        for (RunStack.Contact contact : stack.contactsOf(run)) {
            if (pairs.of(contact).isKnown(now[contact.below()], now[contact.above()])) {
                return true;
            }
        }
        return stars.isKnown(run, now);
    }
}
