package org.coursewright.layout.ui.plan.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.coursewright.core.geometry.Place;
import org.coursewright.diagram.ui.history.EditCommand;
import org.coursewright.diagram.ui.scale.DiagramScale;
import org.coursewright.diagram.ui.scale.LengthStep;
import org.coursewright.layout.ui.plan.paint.FeedbackPainting;
import org.coursewright.layout.ui.plan.shape.PlanPoint;
import org.coursewright.layout.ui.plan.shape.PlanVector;
import org.coursewright.measure.Length;
import org.coursewright.model.edit.command.ProjectCommand;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.Handle;
import org.eclipse.gef.Request;
import org.eclipse.gef.RequestConstants;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.editpolicies.SelectionHandlesEditPolicy;

/** Lets something be dragged as a whole and by a grip at either end, shows where it would be, and makes the edit. */
abstract class GripPolicy extends SelectionHandlesEditPolicy {

    private static final int REACH = 8;

    private final Feedback feedback = new Feedback();

    /** What a drag comes to. */
    record Dragged(Optional<? extends ProjectCommand> edit, FeedbackPainting painting) {
    }

    /** @return the part that is dragged */
    abstract PlanPart<?> part();

    /** @return where the grips are */
    abstract Map<Place, PlanPoint> grips();

    /** @return what becomes of dragging the whole so far, empty if it is dragged along with something else */
    abstract Optional<Dragged> drag(MoveRequest request, PlanVector by);

    /** @return what becomes of dragging a grip so far */
    abstract Optional<Dragged> drag(GripRequest request, PlanVector by);

    @Override
    protected List<Handle> createSelectionHandles() {
        List<Handle> made = new ArrayList<>();
        grips().keySet().forEach(place -> made.add(new GripHandle(part(), place, () -> grips().get(place))));
        return made;
    }

    /** Puts the grips where they are now. */
    final void relocate() {
        if (part().getSelected() == EditPart.SELECTED_PRIMARY) {
            addSelectionHandles();
        }
    }

    @Override
    public boolean understandsRequest(Request request) {
        return RequestConstants.REQ_MOVE.equals(request.getType()) || request instanceof GripRequest;
    }

    @Override
    public Command getCommand(Request request) {
        return dragged(request).flatMap(Dragged::edit).map(EditCommand::new).orElse(null);
    }

    @Override
    public void showSourceFeedback(Request request) {
        dragged(request).ifPresentOrElse(dragged -> feedback.show(part().getViewer(), dragged.painting()),
                feedback::erase);
    }

    @Override
    public void eraseSourceFeedback(Request request) {
        feedback.erase();
    }

    @Override
    public void deactivate() {
        feedback.erase();
        super.deactivate();
    }

    private Optional<Dragged> dragged(Request request) {
        if (request instanceof GripRequest grip) {
            return drag(grip, way(grip.moved()));
        }
        return request instanceof MoveRequest move ? drag(move, way(move.getMoveDelta())) : Optional.empty();
    }

    private PlanVector way(Point pixels) {
        DiagramScale scale = DiagramScale.of(part().getViewer());
        return new PlanVector(scale.toLength(pixels.x), scale.toLength(-pixels.y));
    }

    final Optional<LengthStep> step(boolean fine) {
        return fine ? Optional.of(LengthStep.of(part().state().format().unit())) : Optional.empty();
    }

    final Length reach() {
        return DiagramScale.of(part().getViewer()).toLength(REACH);
    }

    /** Says why an edit cannot be made, or what it would come to. */
    static String words(ProjectCommand edit, String otherwise) {
        return edit.refusal().map(refusal -> refusal.reason()).orElse(otherwise);
    }
}
