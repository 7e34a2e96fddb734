package org.coursewright.layout.ui.plan.change;

import java.util.Optional;

import org.coursewright.diagram.ui.scale.LengthStep;
import org.coursewright.layout.ui.plan.shape.WallShape;
import org.coursewright.measure.Length;

/**
 * Where an opening goes when it is dragged along its wall. Jambs stop where units end and begin, or at every fine step, and
 * at the ends of the wall.
 *
 * @param wall that it is in
 * @param start where it is at first
 * @param fine step instead of the module, empty for the module
 */
public record OpeningShift(WallShape wall, Jambs start, Optional<LengthStep> fine) {

    /**
     * Where an opening is in its wall.
     *
     * @param offset from the outer start face to the near jamb
     * @param width between jambs
     */
    public record Jambs(Length offset, Length width) {

        /** @return from the outer start face to the far jamb */
        public Length end() {
            return offset.plus(width);
        }
    }

    /**
     * @param by how far the mouse has moved, from the wall's start to its end
     * @return where the opening is then, as wide as before
     */
    public Jambs moved(Length by) {
        Length raw = start.offset().plus(by);
        Length offset = fine.map(step -> step.round(raw)).orElseGet(() -> wall.module().nearJamb(raw));
        return new Jambs(within(offset, Length.ZERO, wall.length().minus(start.width())), start.width());
    }

    /**
     * @param by how far the near jamb is dragged
     * @return where the opening is then; its far jamb stays
     */
    public Jambs nearJamb(Length by) {
        Length raw = start.offset().plus(by);
        Length offset = fine.map(step -> step.round(raw)).orElseGet(() -> wall.module().nearJamb(raw));
        Length kept = within(offset, Length.ZERO, start.end().minus(least()));
        return new Jambs(kept, start.end().minus(kept));
    }

    /**
     * @param by how far the far jamb is dragged
     * @return where the opening is then; its near jamb stays
     */
    public Jambs farJamb(Length by) {
        Length raw = start.end().plus(by);
        Length end = fine.map(step -> step.round(raw)).orElseGet(() -> wall.module().farJamb(raw));
        Length kept = within(end, start.offset().plus(least()), wall.length());
        return new Jambs(start.offset(), kept.minus(start.offset()));
    }

    /**
     * Goes on from where the opening is by whole steps, wherever that is.
     *
     * @param steps from the wall's start to its end, negative for the other way
     * @return where the opening is then
     */
    public Jambs nudged(int steps) {
        Length step = fine.map(LengthStep::step).orElseGet(() -> wall.module().step());
        return moved(step.times(steps));
    }

    private Length least() {
        return fine.map(LengthStep::step).orElseGet(() -> wall.module().step());
    }

    private static Length within(Length value, Length least, Length most) {
        Length atMost = value.isGreaterThan(most) ? most : value;
        return atMost.isLessThan(least) ? least : atMost;
    }
}
