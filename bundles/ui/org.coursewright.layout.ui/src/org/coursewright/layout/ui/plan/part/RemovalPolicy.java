package org.coursewright.layout.ui.plan.part;

import org.coursewright.diagram.ui.history.EditCommand;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;
import org.coursewright.model.edit.command.RemoveOpeningCommand;
import org.coursewright.model.edit.command.RemoveWallCommand;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.editpolicies.ComponentEditPolicy;
import org.eclipse.gef.requests.GroupRequest;

/** Deletes walls with their openings, and openings whose walls stay. */
final class RemovalPolicy extends ComponentEditPolicy {

    @Override
    protected Command createDeleteCommand(GroupRequest request) {
        Object model = getHost().getModel();
        if (model instanceof Wall wall) {
            return new EditCommand(new RemoveWallCommand(wall));
        }
        return model instanceof Opening opening && !isDeleted(request, opening.eContainer())
                ? new EditCommand(new RemoveOpeningCommand(opening))
                : null;
    }

    private static boolean isDeleted(GroupRequest request, Object wall) {
        if (request.getEditParts() == null) {
            return false;
        }
        for (Object part : request.getEditParts()) {
            if (((EditPart) part).getModel() == wall) {
                return true;
            }
        }
        return false;
    }
}
