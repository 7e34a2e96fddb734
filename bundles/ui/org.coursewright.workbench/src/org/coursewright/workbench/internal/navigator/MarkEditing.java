package org.coursewright.workbench.internal.navigator;

import org.coursewright.model.project.Marked;
import org.coursewright.workbench.OpenProjects;
import org.coursewright.workbench.internal.element.ElementEdits;
import org.eclipse.jface.viewers.CellEditor;
import org.eclipse.jface.viewers.ColumnViewerEditor;
import org.eclipse.jface.viewers.ColumnViewerEditorActivationEvent;
import org.eclipse.jface.viewers.ColumnViewerEditorActivationStrategy;
import org.eclipse.jface.viewers.EditingSupport;
import org.eclipse.jface.viewers.TextCellEditor;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.viewers.TreeViewerEditor;

/** Changes the mark of an element where it stands in the tree: on a double click, or when rename is asked for. */
final class MarkEditing extends EditingSupport {

    private final OpenProjects projects;
    private final TextCellEditor editor;

    MarkEditing(TreeViewer viewer, OpenProjects projects) {
        super(viewer);
        this.projects = projects;
        this.editor = new TextCellEditor(viewer.getTree());
        TreeViewerEditor.create(viewer, new OnDoubleClick(viewer), ColumnViewerEditor.DEFAULT);
    }

    @Override
    protected CellEditor getCellEditor(Object element) {
        return editor;
    }

    @Override
    protected boolean canEdit(Object element) {
        return element instanceof Marked;
    }

    @Override
    protected Object getValue(Object element) {
        String mark = ((Marked) element).getMark();
        return mark == null ? "" : mark;
    }

    @Override
    protected void setValue(Object element, Object value) {
        Marked marked = (Marked) element;
        String mark = value.toString().strip();
        if (!mark.isEmpty() && !mark.equals(marked.getMark())) {
            projects.sessionOf(marked)
                    .ifPresent(session -> session.execute(ElementEdits.rename(session, marked, mark)));
        }
    }

    private static final class OnDoubleClick extends ColumnViewerEditorActivationStrategy {

        OnDoubleClick(TreeViewer viewer) {
            super(viewer);
        }

        @Override
        protected boolean isEditorActivationEvent(ColumnViewerEditorActivationEvent event) {
            return event.eventType == ColumnViewerEditorActivationEvent.MOUSE_DOUBLE_CLICK_SELECTION
                    || event.eventType == ColumnViewerEditorActivationEvent.PROGRAMMATIC;
        }
    }
}
