package org.coursewright.workbench.internal.project;

import java.util.List;

import org.coursewright.workbench.OpenProjects;
import org.eclipse.ui.IActionBars;
import org.eclipse.ui.IViewSite;
import org.eclipse.ui.services.IServiceLocator;

/** Undo, redo and save as a part offers them: on the active project, whichever part has the focus. */
public final class ProjectActions {

    private final List<SessionAction> actions;

    /** @param site of the view that is to offer the actions from now on */
    public ProjectActions(IViewSite site) {
        this(site.getActionBars(), List.of(new UndoAction(projects(site)), new RedoAction(projects(site)),
                new SaveAction(projects(site), site)));
    }

    /**
     * Undo and redo for editors and what belongs to one, which the platform saves by itself.
     *
     * @param bars of all editors of one kind, or of a page beside an editor
     * @param site where they are
     */
    public ProjectActions(IActionBars bars, IServiceLocator site) {
        this(bars, List.of(new UndoAction(projects(site)), new RedoAction(projects(site))));
    }

    private ProjectActions(IActionBars bars, List<SessionAction> actions) {
        this.actions = actions;
        actions.forEach(action -> bars.setGlobalActionHandler(action.getId(), action));
        bars.updateActionBars();
    }

    private static OpenProjects projects(IServiceLocator site) {
        return site.getService(OpenProjects.class);
    }

    /** Lets go of the open projects; to be called when the view is disposed of. */
    public void dispose() {
        actions.forEach(SessionAction::dispose);
    }
}
