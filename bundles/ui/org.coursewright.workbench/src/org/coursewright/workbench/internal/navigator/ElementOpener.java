package org.coursewright.workbench.internal.navigator;

import org.coursewright.workbench.WorkbenchIds;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.part.IShowInTarget;
import org.eclipse.ui.part.ShowInContext;

/**
 * Selects an element in the navigator and opens it in the editor that some plug-in has for it.
 *
 * @param window in which
 */
public record ElementOpener(IWorkbenchWindow window) {

    /** @param element to be shown; if no plug-in has an editor for it, it is only selected */
    public void open(EObject element) {
        try {
            ((IShowInTarget) window.getActivePage().showView(WorkbenchIds.NAVIGATOR))
                    .show(new ShowInContext(null, new StructuredSelection(element)));
            if (window.getService(ICommandService.class).getCommand(WorkbenchIds.OPEN_ELEMENT).isEnabled()) {
                window.getService(IHandlerService.class).executeCommand(WorkbenchIds.OPEN_ELEMENT, null);
            }
        } catch (PartInitException | CommandException e) {
            throw new IllegalStateException(e);
        }
    }
}
