package org.coursewright.bond.internal.pieces;

import java.util.Optional;

import org.coursewright.bond.NearestLengths;
import org.coursewright.bond.UnfillableReason;
import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.RunShape;
import org.coursewright.measure.Length;

/** Tells why nothing fills a run, and which lengths next to a run's own could be filled, with few cuts or at all. */
public final class FillableLengths {

    /** How far from the run's length to look, in whole units. */
    private static final int REACH = 3;

    private final Masonry masonry;

    /** @param masonry what runs are filled with */
    public FillableLengths(Masonry masonry) {
        this.masonry = masonry;
    }

    /** Why nothing fills a run. */
    public UnfillableReason reason(RunShape shape) {
        long joints = (shape.startJoints() + shape.endJoints()) * masonry.least();
        long shortest = shortestPiece(shape);
        return shape.length() < shortest + joints
                ? new UnfillableReason.TooShort(Length.ofUnits(shortest), Length.ofUnits(joints))
                : new UnfillableReason.NothingAddsUp(Length.ofUnits(masonry.least()), Length.ofUnits(masonry.most()));
    }

    private long shortestPiece(RunShape shape) {
        long shortest = masonry.specials().stream().reduce(masonry.whole(), Math::min);
        if (!masonry.canCut()) {
            return shortest;
        }
        return Math.min(shortest, shape.isRaked() ? masonry.shortest() : masonry.cutLeast());
    }

    /** The nearest lengths that can be filled; exact, as fillable lengths form intervals. */
    public NearestLengths nearest(RunShape shape) {
        return nearest(shape, Integer.MAX_VALUE);
    }

    /** The nearest lengths that can be filled with no more than so many pieces cut to length. */
    public NearestLengths nearest(RunShape shape, int mostCuts) {
        return new NearestLengths(nearest(shape, mostCuts, -1), nearest(shape, mostCuts, 1));
    }

    private Optional<Length> nearest(RunShape shape, int mostCuts, int direction) {
        return new FillableIntervals(masonry, shape, mostCuts).nearest(direction, REACH * masonry.whole())
                .map(Length::ofUnits);
    }
}
