package org.coursewright.diagram.ui.editor;

import java.util.Objects;

import org.coursewright.core.finding.ElementReference;
import org.coursewright.core.session.ProjectSession;
import org.coursewright.model.edit.ElementLabels;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IPersistableElement;

/**
 * An element of an open project that an editor is opened on; equal for the same element.
 *
 * @param session of the project
 * @param element in it
 */
public record ElementInput(ProjectSession session, EObject element) implements IEditorInput {

    public ElementInput {
        Objects.requireNonNull(element, "element");
    }

    @Override
    public boolean exists() {
        return false;
    }

    @Override
    public ImageDescriptor getImageDescriptor() {
        return null;
    }

    @Override
    public String getName() {
        return ElementLabels.of(element);
    }

    /** @return what leads here again after the next start, null if the element is in no file yet */
    @Override
    public IPersistableElement getPersistable() {
        return ElementReference.of(element, getName()).id().map(id -> new StoredElement(session.file(), id))
                .orElse(null);
    }

    @Override
    public String getToolTipText() {
        return getName() + " \u2013 " + session.file();
    }

    @Override
    public <T> T getAdapter(Class<T> type) {
        return type.isInstance(element) ? type.cast(element) : null;
    }
}
