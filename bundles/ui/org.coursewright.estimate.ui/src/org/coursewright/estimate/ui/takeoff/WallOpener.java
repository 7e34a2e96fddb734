package org.coursewright.estimate.ui.takeoff;

import java.util.HashMap;
import java.util.Map;

import org.coursewright.workbench.WorkbenchIds;
import org.eclipse.core.commands.Command;
import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.services.IServiceLocator;

/**
 * Shows the blocks of a line in their wall, by whatever plug-in draws walls.
 *
 * @param site of the editor
 */
record WallOpener(IServiceLocator site) {

    /** @return whether there is such a plug-in */
    boolean canOpen() {
        return command().isHandled();
    }

    void open(TakenFrom taken) {
        Map<String, String> parameters = new HashMap<>(Map.of(WorkbenchIds.SHOW_PIECES_WALL, taken.wall()));
        taken.kind().ifPresent(kind -> parameters.put(WorkbenchIds.SHOW_PIECES_KIND, kind));
        taken.onlyCourse().ifPresent(course -> parameters.put(WorkbenchIds.SHOW_PIECES_COURSE, course.toString()));
        try {
            site.getService(IHandlerService.class).executeCommand(ParameterizedCommand.generateCommand(command(),
                    parameters), null);
        } catch (CommandException e) {
            throw new IllegalStateException(e);
        }
    }

    private Command command() {
        return site.getService(ICommandService.class).getCommand(WorkbenchIds.SHOW_PIECES);
    }
}
