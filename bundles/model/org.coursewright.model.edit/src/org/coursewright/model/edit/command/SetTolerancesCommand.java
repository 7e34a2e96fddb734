package org.coursewright.model.edit.command;

import org.coursewright.measure.Length;
import org.coursewright.model.building.BuildingPackage.Literals;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;
import org.coursewright.model.edit.ElementLabels;

/** Sets how far the builder may propose to move and to resize an opening or a wall. */
public final class SetTolerancesCommand extends FeatureCommand {

    /**
     * @param opening of a project
     * @param move either way, 0 or more
     * @param size wider or narrower, 0 or more
     */
    public SetTolerancesCommand(Opening opening, Length move, Length size) {
        super(opening, ElementLabels.of(opening));
        set(Literals.OPENING__MOVE_TOLERANCE, move);
        set(Literals.OPENING__SIZE_TOLERANCE, size);
    }

    /**
     * @param wall of a project
     * @param move sideways, either way, 0 or more
     * @param size longer or shorter where it ends in the open, 0 or more
     */
    public SetTolerancesCommand(Wall wall, Length move, Length size) {
        super(wall, ElementLabels.of(wall));
        set(Literals.WALL__MOVE_TOLERANCE, move);
        set(Literals.WALL__SIZE_TOLERANCE, size);
    }
}
