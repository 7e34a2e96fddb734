package org.coursewright.diagram.ui.part;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.Request;
import org.eclipse.gef.RequestConstants;

/**
 * The part that lies under all others of a diagram. It is not edited itself, and what is dragged stays in it, wherever the
 * mouse is.
 *
 * @param <E> type of the element
 */
public abstract class GroundPart<E extends EObject> extends ElementPart<E> {

    /** @param element to be shown */
    protected GroundPart(E element) {
        super(element);
    }

    @Override
    protected void createEditPolicies() {
        // parts over this one are edited
    }

    @Override
    public EditPart getTargetEditPart(Request request) {
        boolean dragged = RequestConstants.REQ_MOVE.equals(request.getType())
                || RequestConstants.REQ_ADD.equals(request.getType());
        return dragged ? this : super.getTargetEditPart(request);
    }
}
