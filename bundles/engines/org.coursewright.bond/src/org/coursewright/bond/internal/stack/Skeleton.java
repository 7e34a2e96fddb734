package org.coursewright.bond.internal.stack;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.coursewright.bond.internal.lap.Windows;
import org.coursewright.bond.internal.run.RunShape;

/**
 * The joints round a run that are there however its neighbours are filled: those at the ends of runs above and below,
 * beside lintels, tees and corners. A pattern that keeps clear of them is one that neighbours can be fitted to.
 */
public final class Skeleton {

    private final RunStack stack;
    private final Map<Integer, Integer> inner = new HashMap<>();
    private final Map<List<Object>, Integer> innerByPlace = new HashMap<>();

    Skeleton(RunStack stack) {
        this.stack = stack;
    }

    /** Where these joints begin, from the start of the run, without those of some neighbours. */
    public List<Long> joints(int run, int... except) {
        List<Long> joints = new ArrayList<>();
        for (RunStack.Contact contact : stack.contactsOf(run)) {
            RunShape shape = stack.pool(contact.other(run)).shape();
            long offset = contact.offsetFrom(run);
            if (counts(contact.other(run), except) && shape.startJoints() == 1) {
                joints.add(offset);
            }
            if (counts(contact.other(run), except) && shape.endJoints() == 1) {
                joints.add(offset + shape.length() - stack.masonry().nominal());
            }
        }
        return joints;
    }

    /** The windows round these joints, all of the nominal width. */
    public Windows windows(int run) {
        Windows windows = new Windows();
        for (long start : joints(run)) {
            windows.add(start, start + stack.masonry().nominal(), stack.masonry().lap(),
                    stack.pool(run).shape().length());
        }
        return windows;
    }

    /** The windows that are there whatever the width of these joints, without those of some neighbours. */
    public Windows certain(int run, int... except) {
        Windows windows = new Windows();
        long least = stack.masonry().least();
        for (RunStack.Contact contact : stack.contactsOf(run)) {
            RunShape shape = stack.pool(contact.other(run)).shape();
            long start = contact.offsetFrom(run);
            long end = start + shape.length();
            if (counts(contact.other(run), except) && shape.startJoints() == 1) {
                windows.add(start, start + least, stack.masonry().lap(), stack.pool(run).shape().length());
            }
            if (counts(contact.other(run), except) && shape.endJoints() == 1) {
                windows.add(end - least, end, stack.masonry().lap(), stack.pool(run).shape().length());
            }
        }
        return windows;
    }

    private static boolean counts(int run, int... except) {
        for (int left : except) {
            if (run == left) {
                return false;
            }
        }
        return true;
    }

    /** Lap violations of the run's joints with those at the ends of its neighbours that no filling avoids. */
    public int least(int run) {
        int least = inner(run);
        for (RunStack.Contact contact : stack.contactsOf(run)) {
            least += contact.forced();
        }
        return least;
    }

    /** Lap violations that the run may need with all its neighbours, theirs with its ends among them; more can be avoided. */
    public int forced(int run) {
        int forced = least(run);
        for (RunStack.Contact contact : stack.contactsOf(run)) {
            forced += inner(contact.other(run));
        }
        return forced;
    }

    /** Joints of these that joints between pieces of the run lap too little with, however it is filled. */
    public int inner(int run) {
        return inner.computeIfAbsent(run, this::findInner);
    }

    private int findInner(int run) {
        List<Long> joints = joints(run);
        return joints.isEmpty()
                ? 0
                : innerByPlace.computeIfAbsent(List.of(stack.pool(run).shape(), joints),
                        place -> stack.pool(run).leastMet(certain(run)));
    }

    /** Lap violations between two runs that may be needed; more can always be avoided. */
    public int allowed(RunStack.Contact contact) {
        return contact.forced() + inner(contact.below()) + inner(contact.above());
    }

    /** Lap violations that every filling of the wall has; proven. */
    public int leastViolations() {
        int least = stack.contacts().stream().mapToInt(RunStack.Contact::forced).sum();
        for (int run = 0; run < stack.runs().size(); run++) {
            least += inner(run);
        }
        return least;
    }
}
