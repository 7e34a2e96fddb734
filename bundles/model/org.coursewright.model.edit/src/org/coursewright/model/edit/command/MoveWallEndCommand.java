package org.coursewright.model.edit.command;

import org.coursewright.measure.Length;
import org.coursewright.model.building.BuildingPackage.Literals;
import org.coursewright.model.building.Wall;
import org.coursewright.model.building.WallPlace;
import org.coursewright.model.edit.ElementLabels;

/** Moves one end of a wall. Its openings keep their offset from the start. */
public final class MoveWallEndCommand extends FeatureCommand {

    /**
     * @param wall of a project
     * @param end its start or its end
     * @param x where to, east
     * @param y where to, north
     * @throws IllegalArgumentException if {@code end} is neither
     */
    public MoveWallEndCommand(Wall wall, WallPlace end, Length x, Length y) {
        super(wall, ElementLabels.of(wall));
        if (end == WallPlace.ALONG) {
            throw new IllegalArgumentException("Only the start or the end of a wall can be moved.");
        }
        set(end == WallPlace.START ? Literals.WALL__FROM_X : Literals.WALL__TO_X, x);
        set(end == WallPlace.START ? Literals.WALL__FROM_Y : Literals.WALL__TO_Y, y);
    }
}
