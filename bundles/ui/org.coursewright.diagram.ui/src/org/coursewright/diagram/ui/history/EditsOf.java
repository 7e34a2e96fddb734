package org.coursewright.diagram.ui.history;

import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.gef.commands.Command;

/** Finds the edits that commands of the graphical framework carry. */
final class EditsOf {

    private EditsOf() {
    }

    /** @return the edit of a command, or all edits of a compound command as one */
    static org.eclipse.emf.common.command.Command command(Command command) {
        if (command instanceof EditCommand carrier) {
            return carrier.edit();
        }
        if (command instanceof org.eclipse.gef.commands.CompoundCommand several) {
            CompoundCommand together = new CompoundCommand(several.getLabel());
            for (Object each : several.getCommands()) {
                together.append(command((Command) each));
            }
            return together.unwrap();
        }
        throw new IllegalArgumentException(
                "\"%s\" does not edit the project; wrap an edit in an EditCommand.".formatted(command.getLabel()));
    }
}
