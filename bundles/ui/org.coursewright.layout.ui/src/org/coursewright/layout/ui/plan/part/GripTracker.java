package org.coursewright.layout.ui.plan.part;

import java.util.List;

import org.coursewright.core.geometry.Place;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.GraphicalEditPart;
import org.eclipse.gef.Request;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.tools.SimpleDragTracker;

/** Drags one grip; with Shift in fine steps, with Ctrl without what meets there. */
final class GripTracker extends SimpleDragTracker {

    private static final String NAME = "grip";

    private final GraphicalEditPart owner;
    private final Place place;

    GripTracker(GraphicalEditPart owner, Place place) {
        this.owner = owner;
        this.place = place;
    }

    @Override
    protected Request createSourceRequest() {
        return new GripRequest(place);
    }

    @Override
    protected List<GraphicalEditPart> createOperationSet() {
        return List.of(owner);
    }

    @Override
    protected void updateSourceRequest() {
        super.updateSourceRequest();
        Dimension moved = getDragMoveDelta();
        ((GripRequest) getSourceRequest()).move(new Point(moved.width, moved.height),
                getCurrentInput().isShiftKeyDown(), getCurrentInput().isControlKeyDown());
    }

    @Override
    protected Command getCommand() {
        return owner.getCommand(getSourceRequest());
    }

    @Override
    protected String getCommandName() {
        return NAME;
    }
}
