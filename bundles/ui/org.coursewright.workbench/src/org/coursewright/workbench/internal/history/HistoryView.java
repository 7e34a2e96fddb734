package org.coursewright.workbench.internal.history;

import java.util.List;

import org.coursewright.core.session.ProjectSession;
import org.coursewright.workbench.OpenProjects;
import org.coursewright.workbench.OpenProjectsListener;
import org.coursewright.workbench.accessible.AccessibleName;
import org.coursewright.workbench.internal.project.ProjectActions;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
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

    private static TableViewer createTable(Composite parent) {
        Composite frame = new Composite(parent, SWT.NONE);
        TableColumnLayout columns = new TableColumnLayout();
        frame.setLayout(columns);
        TableViewer table = new TableViewer(frame, SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.SINGLE);
        TableViewerColumn column = new TableViewerColumn(table, SWT.NONE);
        column.setLabelProvider(new StepLabels());
        columns.setColumnData(column.getColumn(), new ColumnWeightData(1));
        table.setContentProvider(ArrayContentProvider.getInstance());
        AccessibleName.give(table.getControl(), HistoryText.accessibleName);
        return table;
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
