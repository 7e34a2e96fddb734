package org.coursewright.core.fit;

import java.util.ArrayList;
import java.util.List;

import org.coursewright.bond.WallEnd;
import org.coursewright.bond.WallFace;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Wall;
import org.coursewright.model.building.WallPlace;
import org.coursewright.model.edit.command.MoveOpeningCommand;
import org.coursewright.model.edit.command.MoveWallEndCommand;
import org.coursewright.model.edit.command.ProjectCommand;

/**
 * A wall made longer or shorter at the end that is free: the end, else the start; then openings, measured from it, keep their
 * place.
 *
 * @param wall along an axis of the plan
 * @param face of the wall, to tell which of its ends is free
 */
public record LengthChange(Wall wall, WallFace face) {

    /**
     * @param change of the length, negative to make it shorter
     * @return undoable commands to execute in order, at least one
     */
    public List<ProjectCommand> commands(Length change) {
        long alongX = Long.signum(wall.getToX().minus(wall.getFromX()).units());
        long alongY = Long.signum(wall.getToY().minus(wall.getFromY()).units());
        if (face.end() instanceof WallEnd.Free) {
            return List.of(new MoveWallEndCommand(wall, WallPlace.END, wall.getToX().plus(change.times(alongX)),
                    wall.getToY().plus(change.times(alongY))));
        }
        List<ProjectCommand> commands = new ArrayList<>();
        commands.add(new MoveWallEndCommand(wall, WallPlace.START, wall.getFromX().minus(change.times(alongX)),
                wall.getFromY().minus(change.times(alongY))));
        wall.getOpenings().forEach(
                opening -> commands.add(new MoveOpeningCommand(opening, opening.getOffset().plus(change))));
        return commands;
    }
}
