package org.coursewright.model.edit.command;

import org.coursewright.model.building.Storey;
import org.coursewright.model.building.Wall;

/** Adds a wall to a storey. */
public final class AddWallCommand extends AddCommand {

    private final Storey storey;
    private final Wall wall;

    /**
     * @param storey of a project
     * @param wall with its values and what it holds, in no project yet
     */
    public AddWallCommand(Storey storey, Wall wall) {
        super(storey, wall);
        this.storey = storey;
        this.wall = wall;
    }

    @Override
    protected void apply() {
        storey.getWalls().add(wall);
    }
}
