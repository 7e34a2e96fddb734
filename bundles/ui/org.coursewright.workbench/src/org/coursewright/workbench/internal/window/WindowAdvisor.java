package org.coursewright.workbench.internal.window;

import org.coursewright.workbench.OpenProjects;
import org.eclipse.swt.graphics.Point;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

/** Tells the platform what a window looks like. */
final class WindowAdvisor extends WorkbenchWindowAdvisor {

    private static final Point FIRST_SIZE = new Point(1400, 900);

    WindowAdvisor(IWorkbenchWindowConfigurer configurer) {
        super(configurer);
    }

    @Override
    public ActionBarAdvisor createActionBarAdvisor(IActionBarConfigurer configurer) {
        return new WindowActions(configurer);
    }

    @Override
    public void preWindowOpen() {
        IWorkbenchWindowConfigurer configurer = getWindowConfigurer();
        configurer.setInitialSize(FIRST_SIZE);
        configurer.setShowMenuBar(true);
        configurer.setShowCoolBar(true);
        configurer.setShowStatusLine(true);
        configurer.setShowProgressIndicator(true);
    }

    @Override
    public void postWindowOpen() {
        IWorkbenchWindow window = getWindowConfigurer().getWindow();
        OpenProjects projects = window.getService(OpenProjects.class);
        window.getSelectionService().addSelectionListener(new ProjectOfSelection(projects));
        EditorArea.keepIn(window);
        projects.addListener(new WindowTitle(getWindowConfigurer(), projects));
    }
}
