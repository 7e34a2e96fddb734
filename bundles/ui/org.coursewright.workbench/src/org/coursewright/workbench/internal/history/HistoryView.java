package org.coursewright.workbench.internal.history;

import java.util.List;

import org.coursewright.core.session.ProjectSession;
import org.coursewright.workbench.OpenProjects;
import org.coursewright.workbench.OpenProjectsListener;
import org.coursewright.workbench.accessible.AccessibleName;
import org.coursewright.workbench.internal.project.ProjectActions;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.ui.part.ViewPart;

/**
 * Lists the edits of the active project, whichever editor or view they were made in. A double-click, or Enter, on one makes
 * the project as it was right after it.
 */
public final class HistoryView extends ViewPart implements OpenProjectsListener {

    private OpenProjects projects;
    private ProjectActions actions;
    private TableViewer viewer;

    @Override
    public void createPartControl(Composite parent) {
        projects = getSite().getService(OpenProjects.class);
        actions = new ProjectActions(getViewSite());
        viewer = createTable(parent);
        viewer.addOpenListener(event -> goTo((IStructuredSelection) event.getSelection()));
        projects.addListener(this);
        show();
    }

    private TableViewer createTable(Composite parent) {
        TableViewer table = new TableViewer(parent, SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL | SWT.SINGLE);
        new TableViewerColumn(table, SWT.NONE).setLabelProvider(new StepLabels());
        table.setContentProvider(ArrayContentProvider.getInstance());
        ColumnViewerToolTipSupport.enableFor(table);
        table.getTable().addListener(SWT.Resize, event -> fitColumn());
        AccessibleName.give(table.getControl(), HistoryText.accessibleName);
        return table;
    }

    /** The longest edit can be read whole, by scrolling if need be. */
    private void fitColumn() {
        TableColumn column = viewer.getTable().getColumn(0);
        column.pack();
        column.setWidth(Math.max(column.getWidth(), viewer.getTable().getClientArea().width));
    }

    @Override
    public void dispose() {
        projects.removeListener(this);
        actions.dispose();
        super.dispose();
    }

    @Override
    public void setFocus() {
        viewer.getControl().setFocus();
    }

    @Override
    public void projectChanged(Change change, ProjectSession session) {
        show();
    }

    private void show() {
        List<Step> steps = projects.active().map(Step::of).orElse(List.of());
        viewer.setInput(steps);
        fitColumn();
        steps.stream().filter(step -> step.place() == Step.Place.PRESENT).forEach(viewer::reveal);
        setContentDescription(projects.active().map(session -> session.project().getName())
                .orElse(HistoryText.noProject));
    }

    private void goTo(IStructuredSelection selection) {
        if (selection.getFirstElement() instanceof Step step) {
            projects.active().ifPresent(session -> session.goTo(step.position()));
        }
    }
}
