package org.coursewright.bond.internal.laying;

import java.util.List;
import java.util.Optional;

import org.coursewright.bond.internal.lap.Windows;
import org.coursewright.bond.internal.run.Pattern;
import org.coursewright.bond.internal.stack.PairFit;
import org.coursewright.bond.internal.stack.PatternPool;
import org.coursewright.bond.internal.stack.RunStack;
import org.coursewright.bond.internal.stack.Skeleton;

/**
 * Fills two runs of consecutive courses afresh and together, between the neighbours they have: where a lap is short it is
 * often no use to change one of them alone.
 */
final class PairRepair {

    private static final int MOST_EXTRA = 4;
    private static final long STEPS = 20_000;

    private final RunStack stack;
    private final PartnerSearch partners;

    PairRepair(RunStack stack) {
        this.stack = stack;
        partners = new PartnerSearch(stack);
    }

    /**
     * Adds patterns of both runs that lap with one another and their neighbours; if there are none, such that lap with
     * the neighbours on one side at least, and patterns of those on the other side that follow them.
     *
     * @param chosen the pattern of every run
     * @return whether a pool has grown
     */
    boolean repair(RunStack.Contact contact, List<Pattern> chosen) {
        boolean grown = false;
        for (Sides sides : Sides.values()) {
            Optional<List<Pattern>> found = fit(contact, chosen, sides);
            if (found.isPresent()) {
                grown |= stack.pool(contact.below()).add(found.get().get(0));
                grown |= stack.pool(contact.above()).add(found.get().get(1));
                if (sides == Sides.BOTH) {
                    break;
                }
                partners.follow(contact.below(), found.get().get(0), false);
                partners.follow(contact.above(), found.get().get(1), true);
            }
        }
        return grown;
    }

    /** Whose neighbours stay as they are. */
    private enum Sides {
        BOTH, BELOW, ABOVE
    }

    private Optional<List<Pattern>> fit(RunStack.Contact contact, List<Pattern> chosen, Sides sides) {
        PatternPool below = stack.pool(contact.below());
        PatternPool above = stack.pool(contact.above());
        if (below.shape().isRaked() || above.shape().isRaked()) {
            return Optional.empty();
        }
        PairFit fit = new PairFit(stack.masonry(), below, above, contact.offset(),
                windows(contact.below(), contact.above(), chosen, sides != Sides.ABOVE),
                windows(contact.above(), contact.below(), chosen, sides != Sides.BELOW), STEPS);
        for (int extra = 0; extra <= MOST_EXTRA; extra++) {
            for (int lower = 0; lower <= extra; lower++) {
                Optional<List<Pattern>> found = fit.fit(below.sets(below.leastCuts() + lower),
                        above.sets(above.leastCuts() + extra - lower));
                if (found.isPresent() || fit.isExhausted()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }

    private Windows windows(int run, int except, List<Pattern> chosen, boolean asChosen) {
        Skeleton skeleton = stack.skeleton();
        Windows windows = asChosen ? new Windows() : skeleton.certain(run, except);
        for (RunStack.Contact contact : stack.contactsOf(run)) {
            if (asChosen && contact.other(run) != except) {
                windows.add(chosen.get(contact.other(run)), contact.offsetFrom(run), stack.masonry().lap(),
                        stack.pool(run).shape().length());
            }
        }
        return windows;
    }
}
