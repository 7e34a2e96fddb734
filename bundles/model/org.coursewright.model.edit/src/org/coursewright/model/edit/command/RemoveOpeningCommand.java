package org.coursewright.model.edit.command;

import org.coursewright.model.building.Opening;

/** Removes an opening, and the proposals to change it. */
public final class RemoveOpeningCommand extends RemoveCommand {

    /** @param opening of a project */
    public RemoveOpeningCommand(Opening opening) {
        super(opening);
    }
}
