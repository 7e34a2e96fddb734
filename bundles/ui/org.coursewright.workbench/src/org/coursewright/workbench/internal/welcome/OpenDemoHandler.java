package org.coursewright.workbench.internal.welcome;

import java.io.IOException;

import org.coursewright.core.session.ProjectSession;
import org.coursewright.model.project.Project;
import org.coursewright.workbench.OpenProjects;
import org.coursewright.workbench.internal.navigator.ElementOpener;
import org.coursewright.workbench.internal.project.ProjectOpening;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.handlers.HandlerUtil;

/** Opens the demo, and its first storey if a plug-in can show it. */
public final class OpenDemoHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindowChecked(event);
        try {
            new ProjectOpening(window.getService(OpenProjects.class), window.getShell()).open(DemoProject.file());
        } catch (IOException e) {
            throw new ExecutionException(WelcomeText.noDemo, e);
        }
        window.getService(OpenProjects.class).active().map(ProjectSession::project).map(Project::getBuilding)
                .flatMap(building -> building.getStoreys().stream().findFirst())
                .ifPresent(storey -> new ElementOpener(window).open(storey));
        return null;
    }
}
