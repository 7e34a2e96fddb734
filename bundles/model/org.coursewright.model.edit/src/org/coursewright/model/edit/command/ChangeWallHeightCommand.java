package org.coursewright.model.edit.command;

import org.coursewright.measure.Length;
import org.coursewright.model.building.BuildingPackage.Literals;
import org.coursewright.model.building.Wall;
import org.coursewright.model.edit.ElementLabels;

/** Makes a wall higher or lower. */
public final class ChangeWallHeightCommand extends FeatureCommand {

    /**
     * @param wall of a project
     * @param height from the base to the top of the square part, greater than 0
     */
    public ChangeWallHeightCommand(Wall wall, Length height) {
        super(wall, ElementLabels.of(wall));
        set(Literals.WALL__HEIGHT, height);
    }
}
