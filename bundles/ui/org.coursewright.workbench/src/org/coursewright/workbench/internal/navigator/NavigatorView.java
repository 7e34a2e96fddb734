package org.coursewright.workbench.internal.navigator;

import org.coursewright.workbench.WorkbenchIds;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.part.ViewPart;

/** Shows every open project as a tree of its elements. */
public final class NavigatorView extends ViewPart {

    private EmptyHint hint;

    @Override
    public void createPartControl(Composite parent) {
        hint = new EmptyHint(parent, this::openProject);
    }

    @Override
    public void setFocus() {
        hint.setFocus();
    }

    private void openProject() {
        try {
            getSite().getService(IHandlerService.class).executeCommand(WorkbenchIds.OPEN_PROJECT, null);
        } catch (CommandException e) {
            throw new IllegalStateException(e);
        }
    }
}
