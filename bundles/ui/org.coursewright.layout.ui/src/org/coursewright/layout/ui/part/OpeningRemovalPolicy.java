package org.coursewright.layout.ui.part;

import org.coursewright.diagram.ui.history.EditCommand;
import org.coursewright.model.edit.command.RemoveOpeningCommand;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.editpolicies.ComponentEditPolicy;
import org.eclipse.gef.requests.GroupRequest;

/** Deletes an opening from its wall. */
final class OpeningRemovalPolicy extends ComponentEditPolicy {

    @Override
    protected Command createDeleteCommand(GroupRequest request) {
        return new EditCommand(new RemoveOpeningCommand(((OpeningPart) getHost()).element()));
    }
}
