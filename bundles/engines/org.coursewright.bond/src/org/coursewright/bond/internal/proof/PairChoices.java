package org.coursewright.bond.internal.proof;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.coursewright.bond.internal.choice.Exclusions;
import org.coursewright.bond.internal.lap.LapCheck;
import org.coursewright.bond.internal.lap.Windows;
import org.coursewright.bond.internal.run.Pattern;
import org.coursewright.bond.internal.stack.PatternPool;
import org.coursewright.bond.internal.stack.RunStack;
import org.coursewright.bond.internal.stack.Skeleton;

/**
 * Which choices of two runs of consecutive courses cannot go together without an avoidable lap violation; found out only
 * for those that are asked about. What is excluded is proven to be.
 */
final class PairChoices {

    /** A run filled with so many extra cuts beside a pattern of the other. */
    private record Beside(int run, Pattern pattern, int extra) {
    }

    private final RunStack stack;
    private final Skeleton skeleton;
    private final RunStack.Contact contact;
    private final List<RunChoice> lower;
    private final List<RunChoice> upper;
    private final LevelFit levels;
    private final PatternsFound found;
    private final boolean[] decided;
    private final boolean[] excluded;
    private Exclusions exclusions;
    private boolean told = true;
    private final Map<Beside, Boolean> fills = new HashMap<>();
    private int ahead = 1;

    PairChoices(RunStack stack, RunStack.Contact contact, List<RunChoice> lower, List<RunChoice> upper,
            LevelFit levels, PatternsFound found) {
        this.stack = stack;
        this.contact = contact;
        this.lower = lower;
        this.upper = upper;
        this.levels = levels;
        this.found = found;
        skeleton = stack.skeleton();
        decided = new boolean[lower.size() * upper.size()];
        excluded = new boolean[decided.length];
        exclusions = Exclusions.none(lower.size(), upper.size());
    }

    /**
     * The same with choices told apart further; what excludes a choice excludes all that it is made of.
     *
     * @param ofLower for the choices of the lower run now, the index of that which each is part of
     */
    PairChoices split(List<RunChoice> nowLower, int[] ofLower, List<RunChoice> nowUpper, int[] ofUpper) {
        PairChoices split = new PairChoices(stack, contact, nowLower, nowUpper, levels, found);
        split.fills.putAll(fills);
        for (int row = 0; row < ofLower.length; row++) {
            for (int column = 0; column < ofUpper.length; column++) {
                int before = ofLower[row] * upper.size() + ofUpper[column];
                int now = row * ofUpper.length + column;
                boolean same = nowLower.get(row) == lower.get(ofLower[row])
                        && nowUpper.get(column) == upper.get(ofUpper[column]);
                split.excluded[now] = excluded[before];
                split.decided[now] = decided[before] && (same || excluded[before]);
            }
        }
        split.told = false;
        return split;
    }

    /** What is known to be excluded, by choice of the lower run, then of the upper. */
    Exclusions exclusions() {
        if (!told) {
            exclusions = Exclusions.of(lower.size(), upper.size(), excluded);
            told = true;
        }
        return exclusions;
    }

    /** Whether two choices are known to exclude one another; nothing is looked into. */
    boolean isKnown(int row, int column) {
        return excluded[row * upper.size() + column];
    }

    /**
     * Whether two choices exclude one another. Where they do, those next to them are looked into as well, more of them
     * each time, for they will be asked about next.
     */
    boolean excludes(int row, int column) {
        if (!decide(row, column)) {
            return false;
        }
        for (int step = 1; step < ahead; step++) {
            decideNext(row + step, column);
            decideNext(row, column + step);
        }
        ahead = Math.min(2 * ahead, Math.max(lower.size(), upper.size()));
        return true;
    }

    private void decideNext(int row, int column) {
        if (row < lower.size() && column < upper.size()
                && (lower.get(row).pattern().isPresent() || upper.get(column).pattern().isPresent())) {
            decide(row, column);
        }
    }

    private boolean decide(int row, int column) {
        if (!decided[row * upper.size() + column]) {
            RunChoice below = lower.get(row);
            RunChoice above = upper.get(column);
            boolean proven;
            if (below.pattern().isPresent() && above.pattern().isPresent()) {
                proven = isLapAvoidable(below.pattern().get(), above.pattern().get());
            } else if (below.pattern().isPresent()) {
                proven = !mayFill(contact.above(), above, below.pattern().get());
            } else if (above.pattern().isPresent()) {
                proven = !mayFill(contact.below(), below, above.pattern().get());
            } else {
                proven = !levels.mayFit(contact, below, above);
            }
            decided[row * upper.size() + column] = true;
            excluded[row * upper.size() + column] = proven;
            told &= !proven;
        }
        return excluded[row * upper.size() + column];
    }

    /**
     * Whether two patterns lap too little where that can be avoided. As few short laps as cannot be avoided are had only if
     * each joint at an end, and all joints between pieces of each run, have as few as they can.
     */
    private boolean isLapAvoidable(Pattern below, Pattern above) {
        long lap = stack.masonry().lap();
        int forced = contact.forced();
        if (skeleton.allowed(contact) == forced) {
            return LapCheck.violations(below, above, contact.offset(), lap, forced + 1) > forced;
        }
        LapCheck.Apart apart = LapCheck.apart(stack.pool(contact.below()).shape(), below,
                stack.pool(contact.above()).shape(), above, contact.offset(), lap);
        return apart.ends() > forced || apart.between() > 0 || apart.first() > skeleton.inner(contact.below())
                || apart.second() > skeleton.inner(contact.above());
    }

    /** Whether a choice of a run may go together with a pattern of the other. */
    private boolean mayFill(int run, RunChoice choice, Pattern beside) {
        PatternPool pool = stack.pool(run);
        Windows windows = skeleton.certain(run, contact.other(run));
        windows.add(beside, contact.offsetFrom(run), stack.masonry().lap(), pool.shape().length());
        int extra = choice.extra();
        boolean may = extra == RunChoice.MOST_EXTRA || fills.computeIfAbsent(new Beside(run, beside, extra),
                key -> pool.mayFill(windows, skeleton.forced(run), extra, shown -> found.add(pool.shape(), shown)));
        return may && (!choice.isGroup()
                || pool.mayFill(windows, skeleton.forced(run), choice.sets(), pool.leastCuts() + extra));
    }
}
