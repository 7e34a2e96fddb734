package org.coursewright.workbench.internal.project;

import java.util.List;

import org.coursewright.workbench.OpenProjects;
import org.eclipse.ui.IActionBars;
import org.eclipse.ui.IViewSite;

/** Undo, redo and save as a view offers them: on the active project, whichever view has the focus. */
public final class ProjectActions {

    private final List<SessionAction> actions;

    /** @param site of the view that is to offer the actions from now on */
    public ProjectActions(IViewSite site) {
        OpenProjects projects = site.getService(OpenProjects.class);
        actions = List.of(new UndoAction(projects), new RedoAction(projects), new SaveAction(projects, site));
        IActionBars bars = site.getActionBars();
        actions.forEach(action -> bars.setGlobalActionHandler(action.getId(), action));
        bars.updateActionBars();
    }

    /** Lets go of the open projects; to be called when the view is disposed of. */
    public void dispose() {
        actions.forEach(SessionAction::dispose);
    }
}
