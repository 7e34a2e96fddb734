package org.coursewright.workbench.internal.project;

import org.coursewright.workbench.OpenProjects;
import org.coursewright.workbench.WorkbenchIds;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.HandlerUtil;

/** Closes the active project, after the platform has asked whether to save what is not saved. */
public final class CloseProjectHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindowChecked(event);
        OpenProjects projects = window.getService(OpenProjects.class);
        ProjectSaveables saveables = saveables(window.getActivePage());
        projects.active().filter(saveables::mayClose).ifPresent(projects::close);
        return null;
    }

    private static ProjectSaveables saveables(IWorkbenchPage page) throws ExecutionException {
        try {
            return Adapters.adapt(page.showView(WorkbenchIds.NAVIGATOR), ProjectSaveables.class);
        } catch (PartInitException e) {
            throw new ExecutionException(e.getMessage(), e);
        }
    }

    @Override
    public void setEnabled(Object evaluationContext) {
        OpenProjects projects = PlatformUI.getWorkbench().getService(OpenProjects.class);
        setBaseEnabled(projects.active().isPresent());
    }
}
