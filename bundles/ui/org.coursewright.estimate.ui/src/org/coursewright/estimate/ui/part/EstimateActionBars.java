package org.coursewright.estimate.ui.part;

import org.coursewright.workbench.internal.project.ProjectActions;
import org.eclipse.ui.IActionBars;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.part.EditorActionBarContributor;

/** Connects the menu's undo and redo with the project whose estimate is shown. */
public final class EstimateActionBars extends EditorActionBarContributor {

    private ProjectActions actions;

    @Override
    public void init(IActionBars bars, IWorkbenchPage page) {
        super.init(bars, page);
        actions = new ProjectActions(bars, page.getWorkbenchWindow());
    }

    @Override
    public void dispose() {
        actions.dispose();
        super.dispose();
    }
}
