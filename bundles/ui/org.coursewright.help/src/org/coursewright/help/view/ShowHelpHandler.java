package org.coursewright.help.view;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Shows the view of help pages. */
public final class ShowHelpHandler extends AbstractHandler {

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        try {
            HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage().showView(HelpView.ID);
        } catch (PartInitException e) {
            throw new ExecutionException(e.getMessage(), e);
        }
        return null;
    }
}
