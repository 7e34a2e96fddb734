package org.coursewright.workbench.internal.window;

import org.coursewright.workbench.WorkbenchIds;
import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

/**
 * The first arrangement of the window: what is planned on the left, its details on the right, findings below; between them
 * the editors, once one is open.
 */
public final class PlanningPerspective implements IPerspectiveFactory {

    private static final float ABOVE_FINDINGS = 0.78f;
    private static final float ABOVE_HISTORY = 0.6f;
    private static final float LEFT = 0.22f;
    private static final float BEFORE_PROPERTIES = 0.72f;

    @Override
    public void createInitialLayout(IPageLayout layout) {
        String middle = layout.getEditorArea();
        layout.setEditorAreaVisible(false);
        layout.addView(WorkbenchIds.FINDINGS, IPageLayout.BOTTOM, ABOVE_FINDINGS, middle);
        layout.addView(WorkbenchIds.NAVIGATOR, IPageLayout.LEFT, LEFT, middle);
        layout.addView(WorkbenchIds.PROPERTIES, IPageLayout.RIGHT, BEFORE_PROPERTIES, middle);
        IFolderLayout below = layout.createFolder("besideProperties", IPageLayout.BOTTOM, ABOVE_HISTORY,
                WorkbenchIds.PROPERTIES);
        below.addView(WorkbenchIds.HISTORY);
        below.addView(WorkbenchIds.OUTLINE);
        layout.getViewLayout(WorkbenchIds.NAVIGATOR).setCloseable(false);
    }
}
