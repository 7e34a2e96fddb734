package org.coursewright.layout.ui.editor;

import org.coursewright.core.session.ProjectSession;
import org.coursewright.diagram.ui.editor.ElementInput;
import org.coursewright.model.building.Wall;
import org.coursewright.workbench.OpenProjects;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.core.runtime.ILog;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Opens the face of the selected wall. */
public final class OpenWallFaceHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindowChecked(event);
        Wall wall = Adapters.adapt(HandlerUtil.getCurrentStructuredSelection(event).getFirstElement(), Wall.class);
        if (wall != null) {
            window.getService(OpenProjects.class).sessionOf(wall)
                    .ifPresent(session -> open(window.getActivePage(), session, wall));
        }
        return null;
    }

    /** Opens the face of a wall, or shows it if it is open. */
    static void open(IWorkbenchPage page, ProjectSession session, Wall wall) {
        try {
            page.openEditor(new ElementInput(session, wall), WallFaceEditor.ID);
        } catch (PartInitException e) {
            ILog.of(OpenWallFaceHandler.class).error(e.getMessage(), e);
        }
    }
}
