package org.coursewright.workbench.internal.navigator;

import org.coursewright.workbench.WorkbenchIds;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.jface.viewers.IOpenListener;
import org.eclipse.jface.viewers.OpenEvent;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.services.IServiceLocator;

/**
 * Opens what is double-clicked, or what Enter is pressed on, in the editor that some plug-in has for it; shows or hides what
 * is below an element that no plug-in has an editor for.
 *
 * @param viewer of the tree
 * @param site services of the view
 */
record ElementOpening(TreeViewer viewer, IServiceLocator site) implements IOpenListener {

    @Override
    public void open(OpenEvent event) {
        if (site.getService(ICommandService.class).getCommand(WorkbenchIds.OPEN_ELEMENT).isEnabled()) {
            openInEditor();
        } else {
            Object element = viewer.getStructuredSelection().getFirstElement();
            viewer.setExpandedState(element, !viewer.getExpandedState(element));
        }
    }

    private void openInEditor() {
        try {
            site.getService(IHandlerService.class).executeCommand(WorkbenchIds.OPEN_ELEMENT, null);
        } catch (CommandException e) {
            throw new IllegalStateException(e);
        }
    }
}
