package org.coursewright.workbench.internal.window;

import org.coursewright.workbench.WorkbenchIds;
import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

/**
 * What every arrangement of the window has in common: what is planned on the left, its details on the right, findings below;
 * between them the editors, once one is open. Each kind of work has a plug-in of its own, which fills the places kept for it
 * once it is there.
 */
abstract class PerspectiveFrame implements IPerspectiveFactory {

    private static final float ABOVE_FINDINGS = 0.75f;
    private static final float ABOVE_HISTORY = 0.6f;
    private static final float LEFT = 0.24f;
    private static final float BEFORE_PROPERTIES = 0.72f;

    private final String plugin;

    /** @param plugin whose views belong into this arrangement, shown below beside the findings */
    PerspectiveFrame(String plugin) {
        this.plugin = plugin;
    }

    @Override
    public final void createInitialLayout(IPageLayout layout) {
        String middle = layout.getEditorArea();
        layout.setEditorAreaVisible(false);
        IFolderLayout below = layout.createFolder("below", IPageLayout.BOTTOM, ABOVE_FINDINGS, middle);
        below.addView(WorkbenchIds.FINDINGS);
        below.addPlaceholder(plugin + ".*");
        below.addPlaceholder(IPageLayout.ID_PROGRESS_VIEW);
        layout.addView(WorkbenchIds.NAVIGATOR, IPageLayout.LEFT, LEFT, middle);
        layout.addView(WorkbenchIds.PROPERTIES, IPageLayout.RIGHT, BEFORE_PROPERTIES, middle);
        IFolderLayout besides = layout.createFolder("besides", IPageLayout.BOTTOM, ABOVE_HISTORY,
                WorkbenchIds.PROPERTIES);
        besides.addView(WorkbenchIds.HISTORY);
        besides.addView(WorkbenchIds.OUTLINE);
        layout.getViewLayout(WorkbenchIds.NAVIGATOR).setCloseable(false);
    }
}
