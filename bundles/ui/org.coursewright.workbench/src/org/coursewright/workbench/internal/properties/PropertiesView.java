package org.coursewright.workbench.internal.properties;

import java.util.Optional;

import org.coursewright.core.session.ProjectSession;
import org.coursewright.workbench.OpenProjects;
import org.coursewright.workbench.OpenProjectsListener;
import org.coursewright.workbench.internal.project.ProjectActions;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.ISelectionListener;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.part.ViewPart;

/** Shows the properties of the one element that is selected in any other part. */
public final class PropertiesView extends ViewPart implements ISelectionListener, OpenProjectsListener {

    private static final int MARGIN = 12;

    private OpenProjects projects;
    private ProjectActions actions;
    private Composite parent;
    private Optional<ElementForm> form = Optional.empty();

    @Override
    public void createPartControl(Composite composite) {
        parent = composite;
        projects = getSite().getService(OpenProjects.class);
        actions = new ProjectActions(getViewSite());
        projects.addListener(this);
        getSite().getPage().addPostSelectionListener(this);
        show(getSite().getPage().getSelection());
    }

    @Override
    public void dispose() {
        getSite().getPage().removePostSelectionListener(this);
        projects.removeListener(this);
        actions.dispose();
        super.dispose();
    }

    @Override
    public void setFocus() {
        form.ifPresentOrElse(ElementForm::setFocus, parent::setFocus);
    }

    @Override
    public void selectionChanged(IWorkbenchPart part, ISelection selection) {
        if (part != this && !(selection.isEmpty() && isShowing())) {
            show(selection);
        }
    }

    /** Where nothing is selected, as in a part just opened, nothing else is wanted instead of what is shown. */
    private boolean isShowing() {
        return form.filter(shown -> projects.sessionOf(shown.element()).isPresent()).isPresent();
    }

    @Override
    public void projectChanged(Change change, ProjectSession session) {
        if (form.isPresent() && projects.sessionOf(form.get().element()).isEmpty()) {
            showHint(PropertiesText.nothingSelected);
        } else {
            form.ifPresent(ElementForm::refresh);
        }
    }

    private void show(ISelection selection) {
        IStructuredSelection elements = selection instanceof IStructuredSelection structured
                ? structured
                : StructuredSelection.EMPTY;
        EObject element = Adapters.adapt(elements.getFirstElement(), EObject.class);
        if (elements.size() > 1) {
            showHint(NLS.bind(PropertiesText.severalSelected, elements.size()));
        } else if (element == null || projects.sessionOf(element).isEmpty()) {
            showHint(PropertiesText.nothingSelected);
        } else if (form.filter(shown -> shown.element() == element).isEmpty()) {
            projects.sessionOf(element).ifPresent(session -> showForm(element, session));
        }
    }

    private void showForm(EObject element, ProjectSession session) {
        clear();
        ElementForm created = new ElementForm(parent, new ElementEditing(session, element));
        form = Optional.of(created);
        parent.layout();
    }

    private void showHint(String text) {
        clear();
        Composite hint = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(MARGIN, MARGIN).applyTo(hint);
        Label label = new Label(hint, SWT.WRAP);
        label.setText(text);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(label);
        parent.layout();
    }

    private void clear() {
        form = Optional.empty();
        for (var child : parent.getChildren()) {
            child.dispose();
        }
    }
}
