package org.coursewright.model.edit.command;

import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;

/** Adds an opening to a wall. */
public final class AddOpeningCommand extends AddCommand {

    private final Wall wall;
    private final Opening opening;

    /**
     * @param wall of a project
     * @param opening with its values, in no project yet
     */
    public AddOpeningCommand(Wall wall, Opening opening) {
        super(wall, opening);
        this.wall = wall;
        this.opening = opening;
    }

    @Override
    protected void apply() {
        wall.getOpenings().add(opening);
    }
}
