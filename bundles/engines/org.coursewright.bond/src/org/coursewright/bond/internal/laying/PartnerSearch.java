package org.coursewright.bond.internal.laying;

import java.util.Optional;

import org.coursewright.bond.internal.lap.Windows;
import org.coursewright.bond.internal.run.Pattern;
import org.coursewright.bond.internal.stack.PatternPool;
import org.coursewright.bond.internal.stack.RunStack;
import org.coursewright.bond.internal.stack.Skeleton;

/**
 * Fits the neighbours of a run to a new pattern of it, and their neighbours further on to what they are given, a few
 * courses far: what helps one course is of no use if the next cannot follow.
 */
final class PartnerSearch {

    private static final int MOST_CUTS = 2;
    private static final int COURSES = 3;

    private final RunStack stack;
    private final Skeleton skeleton;

    PartnerSearch(RunStack stack) {
        this.stack = stack;
        skeleton = stack.skeleton();
    }

    /** @param above whether to go upwards from the run */
    void follow(int run, Pattern pattern, boolean above) {
        follow(run, pattern, above, COURSES);
    }

    private void follow(int run, Pattern pattern, boolean above, int courses) {
        for (RunStack.Contact contact : stack.contactsOf(run)) {
            if (contact.below() == run == above) {
                int other = contact.other(run);
                Optional<Pattern> partner = partner(other, pattern, contact.offsetFrom(other));
                if (partner.isPresent() && stack.pool(other).add(partner.get()) && courses > 1) {
                    follow(other, partner.get(), above, courses - 1);
                }
            }
        }
    }

    /** A pattern of the run that laps with a neighbour's and keeps clear of the joints that are there anyway. */
    private Optional<Pattern> partner(int run, Pattern neighbour, long offset) {
        PatternPool pool = stack.pool(run);
        Windows windows = skeleton.windows(run);
        windows.add(neighbour, offset, stack.masonry().lap(), pool.shape().length());
        return pool.variants(windows, Integer.MAX_VALUE, MOST_CUTS, 1).stream().findFirst();
    }
}
