package org.coursewright.workbench.internal.navigator;

import org.coursewright.model.project.Marked;
import org.coursewright.workbench.OpenProjects;
import org.coursewright.workbench.internal.element.ElementEdits;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.actions.BaseSelectionListenerAction;

/** Deletes the selected element; undo brings it back. */
final class DeleteAction extends BaseSelectionListenerAction {

    private final OpenProjects projects;

    DeleteAction(OpenProjects projects) {
        super(NavigatorText.delete);
        this.projects = projects;
        setId(ActionFactory.DELETE.getId());
        setActionDefinitionId(ActionFactory.DELETE.getCommandId());
        setEnabled(false);
    }

    @Override
    protected boolean updateSelection(IStructuredSelection selection) {
        return selection.size() == 1 && selection.getFirstElement() instanceof Marked;
    }

    @Override
    public void run() {
        Marked element = (Marked) getStructuredSelection().getFirstElement();
        projects.sessionOf(element).ifPresent(session -> session.execute(ElementEdits.delete(session, element)));
    }
}
