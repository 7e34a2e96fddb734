package org.coursewright.workbench.internal.finding;

import java.util.List;
import java.util.function.Function;

import org.coursewright.core.finding.Severity;
import org.coursewright.workbench.internal.element.ElementIcons;
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

    FindingsTable(Composite parent) {
        super(parent, SWT.NONE);
        setLayout(columns);
        images = new LocalResourceManager(JFaceResources.getResources(), this);
        viewer = new TableViewer(this, SWT.FULL_SELECTION | SWT.V_SCROLL | SWT.H_SCROLL);
        viewer.setContentProvider(ArrayContentProvider.getInstance());
        viewer.getTable().setHeaderVisible(true);
        ColumnViewerToolTipSupport.enableFor(viewer);
        addColumn(FindingsText.element, NARROW, new SeverityLabels());
        addColumn(FindingsText.finding, WIDE, new Labels(row -> row.finding().message()));
        addColumn(FindingsText.project, NARROW, new Labels(row -> row.project().getName()));
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

    void show(List<FindingRow> rows) {
        viewer.setInput(rows);
    }

    @Override
    public boolean setFocus() {
        return viewer.getControl().setFocus();
    }

    private static class Labels extends ColumnLabelProvider {

        private final Function<FindingRow, String> text;

        Labels(Function<FindingRow, String> text) {
            this.text = text;
        }

        @Override
        public String getText(Object row) {
            return text.apply((FindingRow) row);
        }

        @Override
        public String getToolTipText(Object row) {
            return ((FindingRow) row).finding().message();
        }
    }

    private final class SeverityLabels extends Labels {

        SeverityLabels() {
            super(row -> row.finding().element().name());
        }

        @Override
        public Image getImage(Object row) {
            return images.create(ElementIcons.named(iconOf(((FindingRow) row).finding().severity())));
        }

        private static String iconOf(Severity severity) {
            return severity == Severity.INVALID ? Severity.ERROR.word() : severity.word();
        }
    }
}
