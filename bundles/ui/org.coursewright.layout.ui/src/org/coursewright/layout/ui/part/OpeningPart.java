package org.coursewright.layout.ui.part;

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

    /**
     * @param opening to be shown
     * @param state what else the editor shows
     */
    public OpeningPart(Opening opening, Supplier<FaceState> state) {
        super(opening);
        this.state = state;
    }

    @Override
    protected IFigure createFigure() {
        return new OpeningFigure();
    }

    @Override
    protected void createEditPolicies() {
        installEditPolicy(EditPolicy.PRIMARY_DRAG_ROLE, new OpeningDragPolicy(this));
        installEditPolicy(EditPolicy.COMPONENT_ROLE, new OpeningRemovalPolicy());
    }

    @Override
    protected void refreshVisuals() {
        ((OpeningFigure) getFigure()).show(state.get().ink(), mark(), label(OpeningPlace.of(element())));
        getFigure().setBounds(box(OpeningPlace.of(element())));
        ((WallPart) getParent()).setLayoutConstraint(this, getFigure(), box(OpeningPlace.of(element())));
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
        return NLS.bind(PartText.openingDragged, new Object[]{ElementLabels.of(element()), format(place.offset()),
                format(place.width())});
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
     * Moves the opening by a step of the drag.
     *
     * @param steps to the right, less than zero to the left
     */
    public void nudge(int steps) {
        OpeningDrag drag = drag();
        EditCommand edit = OpeningEdits.bring(element(), drag.moved(drag.step().step().times(steps)));
        getViewer().getEditDomain().getCommandStack().execute(edit);
    }
}
