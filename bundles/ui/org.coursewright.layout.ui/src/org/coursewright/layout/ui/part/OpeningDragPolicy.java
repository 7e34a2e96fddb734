package org.coursewright.layout.ui.part;

import java.util.List;

import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.PositionConstants;
import org.eclipse.gef.RequestConstants;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.editpolicies.ResizableEditPolicy;
import org.eclipse.gef.requests.ChangeBoundsRequest;

/** Lets an opening be dragged along its wall, and by its jambs; shows where it would be, and how far that is. */
final class OpeningDragPolicy extends ResizableEditPolicy {

    /** How many places are laid ahead while the mouse rests, at most. */
    private static final int NEXT = 10;

    private final OpeningPart opening;
    private final MouseAhead mouse = new MouseAhead();

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
        OpeningGrip grip = grip(request);
        return destination(grip, pixels(grip, request));
    }

    private OpeningPlace destination(OpeningGrip grip, int pixels) {
        OpeningDrag drag = opening.drag();
        OpeningPlace place = drag.to(grip, opening.length(pixels));
        return place.equals(drag.start()) ? place : opening.attracted(grip, place);
    }

    private static int pixels(OpeningGrip grip, ChangeBoundsRequest request) {
        return switch (grip) {
            case OPENING -> request.getMoveDelta().x;
            case NEAR_JAMB -> -request.getSizeDelta().width;
            case FAR_JAMB -> request.getSizeDelta().width;
        };
    }

    private static OpeningGrip grip(ChangeBoundsRequest request) {
        if (!RequestConstants.REQ_RESIZE.equals(request.getType())) {
            return OpeningGrip.OPENING;
        }
        boolean near = (request.getResizeDirection() & PositionConstants.WEST) != 0;
        return near ? OpeningGrip.NEAR_JAMB : OpeningGrip.FAR_JAMB;
    }

    @Override
    protected IFigure createDragSourceFeedbackFigure() {
        DragFigure figure = new DragFigure();
        addFeedback(figure);
        return figure;
    }

    @Override
    protected void showChangeBoundsFeedback(ChangeBoundsRequest request) {
        OpeningGrip grip = grip(request);
        int pixels = pixels(grip, request);
        OpeningPlace place = destination(grip, pixels);
        List<OpeningPlace> next = mouse.after(pixels).mapToObj(each -> destination(grip, each)).distinct()
                .filter(each -> !each.equals(place)).limit(NEXT).toList();
        opening.dragTo(grip, place, next);
    }

    /** Says where the opening would be, and what that takes as far as it is known. */
    void label(OpeningPlace to) {
        ((DragFigure) getDragSourceFeedbackFigure()).show(opening.box(to), opening.dragLabel(to));
    }

    @Override
    protected void eraseChangeBoundsFeedback(ChangeBoundsRequest request) {
        super.eraseChangeBoundsFeedback(request);
        mouse.forget();
        opening.dragEnded();
    }
}
