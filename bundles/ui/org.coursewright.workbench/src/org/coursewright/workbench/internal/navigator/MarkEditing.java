package org.coursewright.workbench.internal.navigator;

import java.util.Optional;
import java.util.function.Consumer;

import org.coursewright.model.edit.Refusal;
import org.coursewright.model.edit.command.ProjectCommand;
import org.coursewright.workbench.OpenProjects;
import org.coursewright.workbench.internal.element.ElementEdits;
import org.eclipse.emf.ecore.EObject;
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
    private final Consumer<String> refused;
    private final TextCellEditor editor;

    /**
     * @param viewer of the tree
     * @param projects to which the elements belong
     * @param refused told why a mark cannot be had, and null once there is nothing to say any more
     */
    MarkEditing(TreeViewer viewer, OpenProjects projects, Consumer<String> refused) {
        super(viewer);
        this.projects = projects;
        this.refused = refused;
        this.editor = new TextCellEditor(viewer.getTree());
        TreeViewerEditor.create(viewer, new OnDoubleClick(viewer), ColumnViewerEditor.DEFAULT);
    }

    @Override
    protected CellEditor getCellEditor(Object element) {
        return editor;
    }

    @Override
    protected boolean canEdit(Object element) {
        return ElementEdits.canRename(element);
    }

    @Override
    protected Object getValue(Object element) {
        refused.accept(null);
        return ElementEdits.name(element);
    }

    @Override
    protected void setValue(Object element, Object value) {
        ProjectCommand rename = ElementEdits.rename(element, value.toString());
        Optional<String> reason = rename.refusal().map(Refusal::reason);
        refused.accept(reason.orElse(null));
        if (reason.isEmpty()) {
            projects.sessionOf((EObject) element).ifPresent(session -> session.execute(rename));
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
