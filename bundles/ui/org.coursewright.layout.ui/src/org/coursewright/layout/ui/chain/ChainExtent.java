package org.coursewright.layout.ui.chain;

import java.util.List;

import org.coursewright.layout.ui.face.FaceDrawing;
import org.coursewright.measure.Length;

/**
 * How much room a wall takes with those beside it.
 *
 * @param before how far they reach to the left of its start, zero or more
 * @param after how far they reach to the right of its start
 * @param highest point of all over its base
 */
public record ChainExtent(Length before, Length after, Length highest) {

    /**
     * @param drawing of the wall
     * @param chain beside it
     * @return their extent
     */
    public static ChainExtent of(FaceDrawing drawing, List<ChainLink> chain) {
        Length left = Length.ZERO;
        Length right = drawing.face().length();
        Length highest = drawing.top().highest();
        for (ChainLink link : chain) {
            left = link.left().isLessThan(left) ? link.left() : left;
            right = link.right().isGreaterThan(right) ? link.right() : right;
            highest = link.highest().isGreaterThan(highest) ? link.highest() : highest;
        }
        return new ChainExtent(left.negated(), right, highest);
    }

    /** @return from the left end of all to the right end of all */
    public Length width() {
        return before.plus(after);
    }
}
