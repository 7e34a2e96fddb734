package org.coursewright.bond.internal;

import java.util.ArrayList;
import java.util.List;

/**
 * The joints round a run that are there however its neighbours are filled: those at the ends of runs above and below,
 * beside lintels, tees and corners. A pattern that keeps clear of them is one that neighbours can be fitted to.
 */
final class Skeleton {

    private final RunStack stack;

    Skeleton(RunStack stack) {
        this.stack = stack;
    }

    /** Where these joints begin, from the start of the run. */
    List<Long> joints(int run) {
        List<Long> joints = new ArrayList<>();
        for (RunStack.Contact contact : stack.contactsOf(run)) {
            boolean above = contact.below() == run;
            RunShape shape = stack.pool(above ? contact.above() : contact.below()).shape();
            long offset = above ? contact.offset() : -contact.offset();
            if (shape.startJoints() == 1) {
                joints.add(offset);
            }
            if (shape.endJoints() == 1) {
                joints.add(offset + shape.length() - stack.masonry().nominal());
            }
        }
        return joints;
    }

    /** The windows round these joints, all of the nominal width. */
    Windows windows(int run) {
        Windows windows = new Windows();
        for (long start : joints(run)) {
            windows.add(start, start + stack.masonry().nominal(), stack.masonry().lap(),
                    stack.pool(run).shape().length());
        }
        return windows;
    }

    /** Lap violations of the run with all its neighbours however they are filled. */
    int forced(int run) {
        return stack.contactsOf(run).stream().mapToInt(RunStack.Contact::forced).sum();
    }
}
