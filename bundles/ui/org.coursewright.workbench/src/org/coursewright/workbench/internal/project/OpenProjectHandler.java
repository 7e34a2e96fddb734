package org.coursewright.workbench.internal.project;

import java.nio.file.Path;
import java.util.Optional;

import org.coursewright.workbench.OpenProjects;
import org.coursewright.workbench.WorkbenchIds;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.handlers.HandlerUtil;

/** Opens the project file named by the command's parameter, or asks for one. */
public final class OpenProjectHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindowChecked(event);
        var opening = new ProjectOpening(window.getService(OpenProjects.class), window.getShell());
        Optional<Path> named = Optional.ofNullable(event.getParameter(WorkbenchIds.OPEN_PROJECT_FILE)).map(Path::of);
        named.or(opening::choose).ifPresent(opening::open);
        return null;
    }
}
