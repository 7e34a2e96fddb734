package org.coursewright.layout.ui.part;

import org.coursewright.measure.Length;
import org.coursewright.model.building.Opening;

/**
 * Where an opening is, or would be, in its wall.
 *
 * @param offset from the wall's outer start face to the near jamb
 * @param width between jambs
 */
public record OpeningPlace(Length offset, Length width) {

    /**
     * @param opening of a wall
     * @return where it is
     */
    public static OpeningPlace of(Opening opening) {
        return new OpeningPlace(opening.getOffset(), opening.getWidth());
    }

    /** @return from the wall's outer start face to the far jamb */
    public Length end() {
        return offset.plus(width);
    }
}
