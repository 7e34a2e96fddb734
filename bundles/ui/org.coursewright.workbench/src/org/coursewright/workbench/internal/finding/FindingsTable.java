package org.coursewright.workbench.internal.finding;

import java.util.List;
import java.util.function.Function;

import org.coursewright.core.session.ProjectSession;
import org.coursewright.model.project.Project;
import org.coursewright.workbench.accessible.AccessibleName;
import org.coursewright.workbench.finding.FindingMarkers;
import org.coursewright.workbench.internal.element.ElementIcons;
import org.eclipse.core.resources.IMarker;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.jface.resource.ResourceManager;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;

/** The table of findings, the gravest first; a long one is read as a tool tip. */
final class FindingsTable extends Composite {

    private static final int NARROW = 18;
    private static final int WIDE = 64;

    private final TableViewer viewer;
    private final TableColumnLayout columns = new TableColumnLayout();
    private final ResourceManager images;

    FindingsTable(Composite parent, FindingMarkers markers) {
        super(parent, SWT.NONE);
        setLayout(columns);
        images = new LocalResourceManager(JFaceResources.getResources(), this);
        viewer = new TableViewer(this, SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL);
        viewer.setContentProvider(ArrayContentProvider.getInstance());
        viewer.getTable().setHeaderVisible(true);
        AccessibleName.give(viewer.getTable(), FindingsText.accessibleName);
        ColumnViewerToolTipSupport.enableFor(viewer);
        addColumn(FindingsText.element, NARROW, new SeverityLabels());
        addColumn(FindingsText.finding, WIDE, new Labels(row -> row.getAttribute(IMarker.MESSAGE, "")));
        addColumn(FindingsText.project, NARROW, new Labels(
                row -> markers.sessionOf(row).map(ProjectSession::project).map(Project::getName).orElse("")));
    }

    private void addColumn(String title, int weight, ColumnLabelProvider labels) {
        TableViewerColumn column = new TableViewerColumn(viewer, SWT.NONE);
        column.getColumn().setText(title);
        column.setLabelProvider(labels);
        columns.setColumnData(column.getColumn(), new ColumnWeightData(weight, true));
    }

    TableViewer viewer() {
        return viewer;
    }

    void show(List<IMarker> rows) {
        viewer.setInput(rows);
    }

    @Override
    public boolean setFocus() {
        return viewer.getControl().setFocus();
    }

    private static class Labels extends ColumnLabelProvider {

        private final Function<IMarker, String> text;

        Labels(Function<IMarker, String> text) {
            this.text = text;
        }

        @Override
        public String getText(Object row) {
            return text.apply((IMarker) row);
        }

        @Override
        public String getToolTipText(Object row) {
            return ((IMarker) row).getAttribute(IMarker.MESSAGE, "");
        }
    }

    private final class SeverityLabels extends Labels {

        SeverityLabels() {
            super(row -> row.getAttribute(IMarker.LOCATION, ""));
        }

        @Override
        public Image getImage(Object row) {
            return images.create(ElementIcons.named(iconOf((IMarker) row)));
        }

        private static String iconOf(IMarker finding) {
            return switch (finding.getAttribute(IMarker.SEVERITY, IMarker.SEVERITY_INFO)) {
                case IMarker.SEVERITY_ERROR -> "error";
                case IMarker.SEVERITY_WARNING -> "warning";
                default -> "note";
            };
        }
    }
}
