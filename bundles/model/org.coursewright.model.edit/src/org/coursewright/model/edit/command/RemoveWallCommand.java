package org.coursewright.model.edit.command;

import org.coursewright.model.building.Wall;

/** Removes a wall with its openings, and what refers to them: ends at junctions, places in beams and activities, proposals. */
public final class RemoveWallCommand extends RemoveCommand {

    /** @param wall of a project */
    public RemoveWallCommand(Wall wall) {
        super(wall);
    }
}
