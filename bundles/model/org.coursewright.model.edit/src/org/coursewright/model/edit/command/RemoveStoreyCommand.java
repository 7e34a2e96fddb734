package org.coursewright.model.edit.command;

import org.coursewright.model.building.Storey;

/** Removes a storey with its walls, and what refers to them. */
public final class RemoveStoreyCommand extends RemoveCommand {

    /** @param storey of a project */
    public RemoveStoreyCommand(Storey storey) {
        super(storey);
    }
}
