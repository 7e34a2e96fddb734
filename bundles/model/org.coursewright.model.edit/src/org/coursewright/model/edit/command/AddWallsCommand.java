package org.coursewright.model.edit.command;

import java.util.List;

import org.coursewright.model.building.Storey;
import org.coursewright.model.building.Wall;

/** Adds several walls to a storey, such as copies of others. */
public final class AddWallsCommand extends CombinedCommand {

    /**
     * @param storey of a project
     * @param walls with their values and what they hold, in no project yet; their marks differ
     */
    public AddWallsCommand(Storey storey, List<Wall> walls) {
        super(storey, walls.stream().map(wall -> new AddWallCommand(storey, wall)).toList(), walls);
    }
}
