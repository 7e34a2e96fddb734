package org.coursewright.workbench.internal.window;

import org.coursewright.workbench.WorkbenchIds;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

/** The first arrangement of the window: what is planned on the left, its details beside it. */
public final class PlanningPerspective implements IPerspectiveFactory {

    @Override
    public void createInitialLayout(IPageLayout layout) {
        layout.setEditorAreaVisible(false);
        layout.addView(WorkbenchIds.NAVIGATOR, IPageLayout.LEFT, 0.35f, layout.getEditorArea());
        layout.getViewLayout(WorkbenchIds.NAVIGATOR).setCloseable(false);
    }
}
