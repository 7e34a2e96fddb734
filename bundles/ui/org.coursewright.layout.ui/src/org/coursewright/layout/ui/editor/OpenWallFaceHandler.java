package org.coursewright.layout.ui.editor;

import org.coursewright.diagram.ui.editor.ElementInput;
import org.coursewright.model.building.Wall;
import org.coursewright.workbench.OpenProjects;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.runtime.Adapters;
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
            open(window, wall);
        }
        return null;
    }

    private static void open(IWorkbenchWindow window, Wall wall) throws ExecutionException {
        var input = window.getService(OpenProjects.class).sessionOf(wall)
                .map(session -> new ElementInput(session, wall));
        if (input.isPresent()) {
            try {
                window.getActivePage().openEditor(input.get(), WallFaceEditor.ID);
            } catch (PartInitException e) {
                throw new ExecutionException(e.getMessage(), e);
            }
        }
    }
}
