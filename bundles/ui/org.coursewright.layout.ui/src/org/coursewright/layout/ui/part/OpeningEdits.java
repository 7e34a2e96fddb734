package org.coursewright.layout.ui.part;

import java.util.List;

import org.coursewright.diagram.ui.history.EditCommand;
import org.coursewright.model.building.Opening;
import org.coursewright.model.edit.command.MoveOpeningCommand;
import org.coursewright.model.edit.command.ResizeOpeningCommand;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;

/** The edit that brings an opening to another place, as one step of the history. */
public final class OpeningEdits {

    private OpeningEdits() {
    }

    /**
     * @param opening of a wall
     * @param to where it is to be
     * @return the edit
     */
    public static EditCommand bring(Opening opening, OpeningPlace to) {
        Command move = new MoveOpeningCommand(opening, to.offset());
        if (to.width().equals(opening.getWidth())) {
            return new EditCommand(move);
        }
        Command resize = new ResizeOpeningCommand(opening, to.width(), opening.getHeight());
        return new EditCommand(to.offset().equals(opening.getOffset())
                ? resize
                : new CompoundCommand(resize.getLabel(), List.of(move, resize)));
    }
}
