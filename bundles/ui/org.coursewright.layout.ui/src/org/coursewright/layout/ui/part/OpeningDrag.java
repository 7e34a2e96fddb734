package org.coursewright.layout.ui.part;

import org.coursewright.diagram.ui.scale.LengthStep;
import org.coursewright.measure.Length;

/**
 * Where a drag takes an opening. Jambs stop at multiples of a step and at the ends of the wall.
 *
 * @param start where the opening is
 * @param wall from outer face to outer face
 * @param step that jambs stop at
 */
public record OpeningDrag(OpeningPlace start, Length wall, LengthStep step) {

    /**
     * @param by how far the opening is dragged, less than zero towards the wall's start
     * @return where it is then, as wide as before
     */
    public OpeningPlace moved(Length by) {
        Length last = wall.minus(start.width());
        return new OpeningPlace(within(step.round(start.offset().plus(by)), Length.ZERO, last), start.width());
    }

    /**
     * @param by how far the near jamb is dragged
     * @return where the opening is then; its far jamb stays
     */
    public OpeningPlace nearJamb(Length by) {
        Length offset = within(step.round(start.offset().plus(by)), Length.ZERO, start.end().minus(step.step()));
        return new OpeningPlace(offset, start.end().minus(offset));
    }

    /**
     * @param by how far the far jamb is dragged
     * @return where the opening is then; its near jamb stays
     */
    public OpeningPlace farJamb(Length by) {
        Length end = within(step.round(start.end().plus(by)), start.offset().plus(step.step()), wall);
        return new OpeningPlace(start.offset(), end.minus(start.offset()));
    }

    /**
     * @param grip what is dragged
     * @param by how far, less than zero towards the wall's start
     * @return where the opening is then
     */
    OpeningPlace to(OpeningGrip grip, Length by) {
        return switch (grip) {
            case OPENING -> moved(by);
            case NEAR_JAMB -> nearJamb(by);
            case FAR_JAMB -> farJamb(by);
        };
    }

    private static Length within(Length value, Length least, Length most) {
        Length atMost = value.isGreaterThan(most) ? most : value;
        return atMost.isLessThan(least) ? least : atMost;
    }
}
