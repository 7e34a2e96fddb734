package org.coursewright.layout.ui.part;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

import org.coursewright.diagram.ui.history.EditCommand;
import org.coursewright.diagram.ui.part.ElementPart;
import org.coursewright.diagram.ui.scale.LengthStep;
import org.coursewright.layout.ui.face.FaceDrawing;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Opening;
import org.coursewright.model.edit.ElementLabels;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.EditPolicy;
import org.eclipse.osgi.util.NLS;

/** An opening; dragged sideways it moves, dragged at a jamb it becomes wider or narrower. */
public final class OpeningPart extends ElementPart<Opening> {

    private final Supplier<FaceState> state;
    private final FaceDragging dragging;
    private final OpeningDragPolicy dragPolicy = new OpeningDragPolicy(this);
    private Optional<OpeningPlace> dragged = Optional.empty();

    /**
     * @param opening to be shown
     * @param state what else the editor shows
     * @param dragging told where it is dragged
     */
    public OpeningPart(Opening opening, Supplier<FaceState> state, FaceDragging dragging) {
        super(opening);
        this.state = state;
        this.dragging = dragging;
    }

    @Override
    protected IFigure createFigure() {
        return new OpeningFigure();
    }

    @Override
    protected void createEditPolicies() {
        installEditPolicy(EditPolicy.PRIMARY_DRAG_ROLE, dragPolicy);
        installEditPolicy(EditPolicy.COMPONENT_ROLE, new OpeningRemovalPolicy());
    }

    @Override
    protected void refreshVisuals() {
        OpeningPlace place = dragged.orElseGet(() -> OpeningPlace.of(element()));
        ((OpeningFigure) getFigure()).show(state.get().ink(), mark(), label(place));
        getFigure().setBounds(box(place));
        ((WallPart) getParent()).setLayoutConstraint(this, getFigure(), box(place));
        dragged.ifPresent(dragPolicy::label);
    }

    /** Shows the opening where it is dragged to, with the window's next frame; the model stays as it is. */
    void dragTo(OpeningGrip grip, OpeningPlace place, List<OpeningPlace> next) {
        dragged = Optional.of(place);
        dragging.dragged(element(), grip, place, next);
        refreshVisuals();
        getFigure().getUpdateManager().performUpdate();
    }

    /** Shows the opening where it is. */
    void dragEnded() {
        if (dragged.isPresent()) {
            dragged = Optional.empty();
            dragging.ended();
            refreshVisuals();
        }
    }

    /** @return where a drag ends that may be drawn to places with few cuts */
    OpeningPlace attracted(OpeningGrip grip, OpeningPlace place) {
        return dragging.attracted(element(), grip, place);
    }

    private String mark() {
        return element().getMark() == null ? "" : element().getMark();
    }

    /** @return its pixels, were it at a place */
    Rectangle box(OpeningPlace place) {
        Length sill = element().getSill();
        return state.get().place(scale()).box(place.offset(), place.end(), sill, sill.plus(element().getHeight()));
    }

    /** @return mark, width and height, were it at a place */
    String label(OpeningPlace place) {
        return NLS.bind(PartText.openingLabel, new Object[]{mark(), format(place.width()),
                format(element().getHeight())});
    }

    /** @return what is to be read while it is dragged to a place */
    String dragLabel(OpeningPlace place) {
        String at = NLS.bind(PartText.openingDragged, new Object[]{ElementLabels.of(element()), format(place.offset()),
                format(place.width())});
        return at
                + state.get().trial().filter(trial -> trial.place().equals(place)).map(OpeningPart::counted).orElse("");
    }

    private static String counted(FaceTrial trial) {
        return trial.drawing().map(drawing -> NLS.bind(PartText.cutsThere, drawing.count().cut()))
                .orElse(PartText.notThere);
    }

    private String format(Length length) {
        return state.get().format().format(length);
    }

    /** @return a drag that begins where the opening is */
    OpeningDrag drag() {
        Length wall = state.get().drawing().map(FaceDrawing::face).map(face -> face.length())
                .orElseGet(() -> OpeningPlace.of(element()).end());
        return new OpeningDrag(OpeningPlace.of(element()), wall, LengthStep.of(state.get().format().unit()));
    }

    /** @return how long so many pixels are */
    Length length(int pixels) {
        return scale().toLength(pixels);
    }

    /**
     * Moves the opening, or one of its jambs, by a step of the drag.
     *
     * @param grip what of it is moved
     * @param steps to the right, less than zero to the left
     */
    public void nudge(OpeningGrip grip, int steps) {
        OpeningDrag drag = drag();
        dragging.held(element(), grip);
        EditCommand edit = OpeningEdits.bring(element(), drag.to(grip, drag.step().step().times(steps)));
        getViewer().getEditDomain().getCommandStack().execute(edit);
    }
}
