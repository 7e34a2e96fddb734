package org.coursewright.workbench.internal.navigator;

import org.coursewright.workbench.OpenProjects;
import org.coursewright.workbench.internal.element.ElementEdits;
import org.eclipse.emf.ecore.EObject;
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
        return selection.size() == 1 && ElementEdits.remove(selection.getFirstElement()).isPresent();
    }

    @Override
    public void run() {
        EObject element = (EObject) getStructuredSelection().getFirstElement();
        ElementEdits.remove(element).ifPresent(
                command -> projects.sessionOf(element).ifPresent(session -> session.execute(command)));
    }
}
