package org.coursewright.workbench.internal.window;

import org.coursewright.workbench.WorkbenchIds;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

/** The first arrangement of the window: what is planned on the left, its details beside it, findings below. */
public final class PlanningPerspective implements IPerspectiveFactory {

    private static final float ABOVE_FINDINGS = 0.68f;
    private static final float LEFT = 0.32f;
    private static final float BEFORE_PROPERTIES = 0.6f;

    @Override
    public void createInitialLayout(IPageLayout layout) {
        String middle = layout.getEditorArea();
        layout.setEditorAreaVisible(false);
        layout.addView(WorkbenchIds.FINDINGS, IPageLayout.BOTTOM, ABOVE_FINDINGS, middle);
        layout.addView(WorkbenchIds.NAVIGATOR, IPageLayout.LEFT, LEFT, middle);
        layout.addView(WorkbenchIds.PROPERTIES, IPageLayout.RIGHT, BEFORE_PROPERTIES, middle);
        layout.getViewLayout(WorkbenchIds.NAVIGATOR).setCloseable(false);
    }
}
