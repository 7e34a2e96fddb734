package org.coursewright.bond.internal.proof;

import java.util.List;
import java.util.Optional;

import org.coursewright.bond.internal.lap.Windows;
import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.Pattern;
import org.coursewright.bond.internal.run.PieceSet;
import org.coursewright.bond.internal.stack.PairFit;
import org.coursewright.bond.internal.stack.PatternPool;
import org.coursewright.bond.internal.stack.RunStack;
import org.coursewright.bond.internal.stack.Skeleton;

/** Tells whether two runs of consecutive courses can be filled with given numbers of cuts so that all laps are kept. */
final class LevelFit {

    private static final long STEPS = 50_000;
    /** With more extra cuts together nearly everything fits. */
    private static final int MOST_EXTRA = 2;

    private final RunStack stack;
    private final Masonry masonry;
    private final Skeleton skeleton;
    private final PatternsFound found;

    /** @param found learns the patterns of both where they fit */
    LevelFit(RunStack stack, PatternsFound found) {
        this.stack = stack;
        this.found = found;
        masonry = stack.masonry();
        skeleton = stack.skeleton();
    }

    /** Whether some fillings of two choices keep the laps, or that is not known. */
    boolean mayFit(RunStack.Contact contact, RunChoice lower, RunChoice upper) {
        return mayFit(contact, lower, upper, skeleton.certain(contact.below(), contact.above()),
                skeleton.certain(contact.above(), contact.below()));
    }

    /** The same where no joints between pieces may lie in given windows. */
    boolean mayFit(RunStack.Contact contact, RunChoice lower, RunChoice upper, Windows windowsBelow,
            Windows windowsAbove) {
        PatternPool below = stack.pool(contact.below());
        PatternPool above = stack.pool(contact.above());
        if (below.shape().isRaked() || above.shape().isRaked() || skeleton.allowed(contact) > contact.forced()
                || lower.extra() + upper.extra() > MOST_EXTRA) {
            return true;
        }
        PairFit fit = new PairFit(masonry, below, above, contact.offset(), windowsBelow, windowsAbove, STEPS);
        Optional<List<Pattern>> patterns = fit.fit(sets(below, lower), sets(above, upper));
        if (patterns.isPresent()) {
            found.add(below.shape(), patterns.get().get(0));
            found.add(above.shape(), patterns.get().get(1));
        }
        if (patterns.isPresent() || fit.isExhausted()) {
            return true;
        }
        return !lower.isGroup() || !upper.isGroup() || fit.hasSkipped();
    }

    private static List<PieceSet> sets(PatternPool pool, RunChoice choice) {
        return choice.isGroup() ? choice.sets() : pool.sets(pool.leastCuts() + choice.extra());
    }
}
