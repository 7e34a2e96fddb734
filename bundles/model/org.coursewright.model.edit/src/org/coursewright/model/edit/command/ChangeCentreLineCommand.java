package org.coursewright.model.edit.command;

import org.coursewright.measure.Length;
import org.coursewright.model.building.BuildingPackage.Literals;
import org.coursewright.model.building.Wall;
import org.coursewright.model.edit.ElementLabels;

/** Moves both ends of a wall. Its openings keep their offset from the start. */
public final class ChangeCentreLineCommand extends FeatureCommand {

    /**
     * @param wall of a project
     * @param fromX start, east
     * @param fromY start, north
     * @param toX end, east
     * @param toY end, north
     */
    public ChangeCentreLineCommand(Wall wall, Length fromX, Length fromY, Length toX, Length toY) {
        super(wall, ElementLabels.of(wall));
        set(Literals.WALL__FROM_X, fromX);
        set(Literals.WALL__FROM_Y, fromY);
        set(Literals.WALL__TO_X, toX);
        set(Literals.WALL__TO_Y, toY);
    }
}
