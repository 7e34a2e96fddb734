package org.coursewright.workbench.internal.navigator;

import org.coursewright.workbench.internal.element.ElementEdits;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.actions.BaseSelectionListenerAction;

/** Starts to edit the mark of the selected element. */
final class RenameAction extends BaseSelectionListenerAction {

    private final TreeViewer viewer;

    RenameAction(TreeViewer viewer) {
        super(NavigatorText.rename);
        this.viewer = viewer;
        setId(ActionFactory.RENAME.getId());
        setActionDefinitionId(ActionFactory.RENAME.getCommandId());
        setEnabled(false);
    }

    @Override
    protected boolean updateSelection(IStructuredSelection selection) {
        return selection.size() == 1 && ElementEdits.canRename(selection.getFirstElement());
    }

    @Override
    public void run() {
        viewer.editElement(getStructuredSelection().getFirstElement(), 0);
    }
}
