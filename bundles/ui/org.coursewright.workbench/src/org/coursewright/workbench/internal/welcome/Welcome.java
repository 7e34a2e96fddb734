package org.coursewright.workbench.internal.welcome;

import org.coursewright.workbench.WorkbenchIds;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Shows the welcome page. */
public final class Welcome extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        try {
            show(HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage());
        } catch (PartInitException e) {
            throw new ExecutionException(e.getMessage(), e);
        }
        return null;
    }

    /**
     * @param page of the window to show it in
     * @throws PartInitException if it cannot be shown
     */
    public static void show(IWorkbenchPage page) throws PartInitException {
        page.openEditor(new WelcomeInput(), WorkbenchIds.WELCOME);
    }
}
