package org.coursewright.layout.ui.chain;

import org.coursewright.layout.ui.face.FaceDrawing;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Wall;

/**
 * A wall of a chain beside the one that is shown.
 *
 * @param wall of the project
 * @param drawing of it, seen from the same side as the chain
 * @param left where it begins, from the start of the wall that is shown; less than zero to its left
 * @param base how much higher its base is
 */
public record ChainLink(Wall wall, FaceDrawing drawing, Length left, Length base) {

    /** @return where it ends */
    public Length right() {
        return left.plus(drawing.face().length());
    }

    /** @return its highest point over the base of the wall that is shown */
    public Length highest() {
        return base.plus(drawing.top().highest());
    }
}
