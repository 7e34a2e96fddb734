package org.coursewright.layout.ui.part;

import org.coursewright.measure.Length;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.PositionConstants;
import org.eclipse.gef.RequestConstants;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.editpolicies.ResizableEditPolicy;
import org.eclipse.gef.requests.ChangeBoundsRequest;

/** Lets an opening be dragged along its wall, and by its jambs; shows where it would be, and how far that is. */
final class OpeningDragPolicy extends ResizableEditPolicy {

    private final OpeningPart opening;

    OpeningDragPolicy(OpeningPart opening) {
        this.opening = opening;
        setResizeDirections(PositionConstants.EAST | PositionConstants.WEST);
    }

    @Override
    protected Command getMoveCommand(ChangeBoundsRequest request) {
        return OpeningEdits.bring(opening.element(), destination(request));
    }

    @Override
    protected Command getResizeCommand(ChangeBoundsRequest request) {
        return OpeningEdits.bring(opening.element(), destination(request));
    }

    private OpeningPlace destination(ChangeBoundsRequest request) {
        OpeningDrag drag = opening.drag();
        if (!RequestConstants.REQ_RESIZE.equals(request.getType())) {
            OpeningPlace place = drag.moved(opening.length(request.getMoveDelta().x));
            return place.equals(drag.start()) ? place : opening.attracted(place);
        }
        Length wider = opening.length(request.getSizeDelta().width);
        return (request.getResizeDirection() & PositionConstants.WEST) != 0
                ? drag.nearJamb(wider.negated())
                : drag.farJamb(wider);
    }

    @Override
    protected IFigure createDragSourceFeedbackFigure() {
        DragFigure figure = new DragFigure();
        addFeedback(figure);
        return figure;
    }

    @Override
    protected void showChangeBoundsFeedback(ChangeBoundsRequest request) {
        opening.dragTo(destination(request));
    }

    /** Says where the opening would be, and what that takes as far as it is known. */
    void label(OpeningPlace to) {
        ((DragFigure) getDragSourceFeedbackFigure()).show(opening.box(to), opening.dragLabel(to));
    }

    @Override
    protected void eraseChangeBoundsFeedback(ChangeBoundsRequest request) {
        super.eraseChangeBoundsFeedback(request);
        opening.dragEnded();
    }
}
