package org.coursewright.model.edit.command;

import org.coursewright.measure.Length;
import org.coursewright.model.building.BuildingPackage.Literals;
import org.coursewright.model.building.Wall;
import org.coursewright.model.edit.ElementLabels;

/** Raises or lowers a wall with all its openings. */
public final class ChangeWallBaseCommand extends FeatureCommand {

    /**
     * @param wall of a project
     * @param base bottom of the first bed joint above the datum of the storey
     */
    public ChangeWallBaseCommand(Wall wall, Length base) {
        super(wall, ElementLabels.of(wall));
        set(Literals.WALL__BASE, base);
    }
}
