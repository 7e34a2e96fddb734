package org.coursewright.workbench.internal.window;

import org.coursewright.workbench.OpenProjects;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.ui.ISelectionListener;
import org.eclipse.ui.IWorkbenchPart;

/** Makes the project active of which something is selected in any part. */
record ProjectOfSelection(OpenProjects projects) implements ISelectionListener {

    @Override
    public void selectionChanged(IWorkbenchPart part, ISelection selection) {
        if (selection instanceof IStructuredSelection structured) {
            EObject element = Adapters.adapt(structured.getFirstElement(), EObject.class);
            if (element != null) {
                projects.sessionOf(element).ifPresent(projects::activate);
            }
        }
    }
}
