package org.coursewright.diagram.ui.history;

import java.util.ArrayList;
import java.util.List;

import org.coursewright.model.edit.EditTexts;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.gef.commands.Command;

/** Finds the edits that commands of the graphical framework carry. */
final class EditsOf {

    private EditsOf() {
    }

    /** @return the edit of a command, or all edits of a compound command, which has some, as one */
    static org.eclipse.emf.common.command.Command command(Command command) {
        if (command instanceof EditCommand carrier) {
            return carrier.edit();
        }
        if (command instanceof org.eclipse.gef.commands.CompoundCommand several) {
            List<org.eclipse.emf.common.command.Command> edits = new ArrayList<>();
            for (Object each : several.getCommands()) {
                edits.add(command((Command) each));
            }
            return together(edits);
        }
        throw new IllegalArgumentException(
                "\"%s\" does not edit the project; wrap an edit in an EditCommand.".formatted(command.getLabel()));
    }

    /** The framework calls every removal of several "Delete Objects"; the first edit says more. */
    private static org.eclipse.emf.common.command.Command together(
            List<org.eclipse.emf.common.command.Command> edits) {
        return edits.size() == 1
                ? edits.get(0)
                : new CompoundCommand(EditTexts.of("label.several", edits.get(0).getLabel(), edits.size() - 1), edits);
    }
}
