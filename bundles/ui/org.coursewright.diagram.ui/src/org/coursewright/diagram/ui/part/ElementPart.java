package org.coursewright.diagram.ui.part;

import java.util.List;

import org.coursewright.diagram.ui.scale.DiagramScale;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.editparts.AbstractGraphicalEditPart;

/**
 * Shows one element of the project. It does not listen to the model: its editor refreshes all parts after each edit,
 * undo, redo and change of zoom.
 *
 * @param <E> type of the element
 */
public abstract class ElementPart<E extends EObject> extends AbstractGraphicalEditPart {

    private final E element;

    /** @param element to be shown */
    protected ElementPart(E element) {
        this.element = element;
        setModel(element);
    }

    /** @return the element that is shown */
    public final E element() {
        return element;
    }

    /** @return the scale to place figures in */
    protected final DiagramScale scale() {
        return DiagramScale.of(getViewer());
    }

    /** @return what parts below this one show, elements or other values; nothing unless overridden */
    protected List<?> parts() {
        return List.of();
    }

    @Override
    protected final List<?> getModelChildren() {
        return parts();
    }

    /** @return the parts below this one */
    @SuppressWarnings("unchecked") // the framework's list is of parts
    public final List<EditPart> childParts() {
        return getChildren();
    }

    /** Shows this part and all below it as the project is now. */
    public void refreshAll() {
        refresh();
        for (EditPart child : List.copyOf(childParts())) {
            if (child instanceof ElementPart<?> part) {
                part.refreshAll();
            } else {
                child.refresh();
            }
        }
    }

    /** Also adapts to the element, so that views and menus see it selected. */
    @Override
    @SuppressWarnings("rawtypes")
    public Object getAdapter(Class type) {
        return type.isInstance(element) ? element : super.getAdapter(type);
    }
}
