package org.coursewright.bond.internal.pieces;

import java.util.Optional;

import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.RunShape;

/**
 * Lengths that can be filled by runs that end like a given one: for each choice of whole units, specials and cut pieces
 * the interval from the pieces with the narrowest joints to the pieces with the widest, one for every multiple of the
 * cut step.
 */
final class FillableIntervals {

    private final Masonry masonry;
    private final RunShape shape;
    private final int mostCuts;
    private long nearest;
    private boolean found;

    /** @param mostCuts most pieces cut to length */
    FillableIntervals(Masonry masonry, RunShape shape, int mostCuts) {
        this.masonry = masonry;
        this.shape = shape;
        this.mostCuts = mostCuts;
    }

    /** The nearest such length below (-1) or above (1) the run's own, no further away than {@code reach}. */
    Optional<Long> nearest(int direction, long reach) {
        long limit = shape.length() + reach;
        long possible = masonry.canCut() ? limit / (masonry.cutLeast() + masonry.least()) + 1 : 0;
        long cutsTried = Math.min(mostCuts, possible);
        found = false;
        considerSingle(direction);
        for (int[] specials : SpecialCounts.upTo(Integer.MAX_VALUE, masonry, limit).counts()) {
            for (long wholes = 0; wholes <= limit / masonry.whole(); wholes++) {
                for (long cuts = 0; cuts <= cutsTried; cuts++) {
                    consider(direction, specials, wholes, cuts);
                }
            }
        }
        boolean near = found && Math.abs(nearest - shape.length()) <= reach;
        return near ? Optional.of(nearest) : Optional.empty();
    }

    /** A piece alone under a rake has whatever length is there. */
    private void considerSingle(int direction) {
        if (shape.isRaked() && shape.startJoints() + shape.endJoints() == 0) {
            long single = Math.max(masonry.shortest(), Math.min(masonry.whole(), shape.length()));
            if (Long.signum(single - shape.length()) != -direction) {
                take(single);
            }
        }
    }

    private void consider(int direction, int[] specials, long wholes, long cuts) {
        long fixed = wholes * masonry.whole();
        long pieces = wholes + cuts;
        for (int kind = 0; kind < specials.length; kind++) {
            fixed += specials[kind] * masonry.specials().get(kind);
            pieces += specials[kind];
        }
        long joints = pieces - 1 + shape.startJoints() + shape.endJoints();
        if (pieces > 0) {
            considerCuts(direction, fixed + joints * masonry.least(), fixed + joints * masonry.most(), cuts);
        }
    }

    private void considerCuts(int direction, long from, long to, long cuts) {
        long least = cuts == 0 ? 0 : cuts * masonry.cutLeast();
        long most = cuts == 0 ? 0 : cuts * masonry.cutMost();
        long step = masonry.cutStep();
        long length = shape.length();
        if (direction < 0) {
            long total = Math.min(most, Spread.lastMultiple(length - from, step));
            if (total >= least) {
                take(Math.min(length, to + total));
            }
        } else {
            long total = Math.max(least, Spread.firstMultiple(length - to, step));
            if (total <= most) {
                take(Math.max(length, from + total));
            }
        }
    }

    private void take(long candidate) {
        if (!found || Math.abs(candidate - shape.length()) < Math.abs(nearest - shape.length())) {
            nearest = candidate;
            found = true;
        }
    }
}
