package org.coursewright.layout.ui.plan.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

import org.coursewright.diagram.ui.part.GroundPart;
import org.coursewright.layout.ui.plan.paint.JunctionPainting;
import org.coursewright.layout.ui.plan.paint.PaintedFigure;
import org.coursewright.layout.ui.plan.paint.PlanLayer;
import org.coursewright.layout.ui.plan.paint.PlanPlace;
import org.coursewright.model.building.Storey;
import org.eclipse.draw2d.IFigure;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.GraphicalEditPart;
import org.eclipse.gef.Request;
import org.eclipse.gef.tools.MarqueeDragTracker;

/** A storey, seen from above: its walls, over them its openings, and its dimension strings. */
public final class StoreyPart extends GroundPart<Storey> {

    private final Supplier<PlanState> state;
    private final PaintedFigure junctions = new PaintedFigure();
    private Wording wording = Wording.NONE;
    private PlanState wordingOf;
    private double zoomed;

    /**
     * @param storey to be shown
     * @param state what else the editor shows
     */
    public StoreyPart(Storey storey, Supplier<PlanState> state) {
        super(storey);
        this.state = state;
    }

    /** @return what else the editor shows */
    public PlanState state() {
        return state.get();
    }

    /** @return where the words of the plan are */
    Wording wording() {
        PlanState now = state();
        if (wordingOf != now || zoomed != scale().zoom()) {
            wordingOf = now;
            zoomed = scale().zoom();
            wording = new StoreyPaintings(now).wording(now.dimensions().values(), now.place(scale()));
        }
        return wording;
    }

    @Override
    protected IFigure createFigure() {
        PlanLayer layer = new PlanLayer();
        layer.add(junctions);
        return layer;
    }

    @Override
    protected List<Object> parts() {
        List<Object> shown = new ArrayList<>(element().getWalls());
        element().getWalls().forEach(wall -> shown.addAll(wall.getOpenings()));
        shown.addAll(state().dimensions().keySet());
        return shown;
    }

    /** Keeps the marks of junctions over everything. */
    @Override
    protected void addChildVisual(EditPart child, int index) {
        getContentPane().add(((GraphicalEditPart) child).getFigure(), index);
    }

    @Override
    protected void refreshVisuals() {
        PlanState shown = state();
        PlanPlace place = shown.place(scale());
        ((PlanLayer) getFigure()).show(place, shown.ink(), shown.grid(), shown.underlay());
        junctions.show(Optional.of(new JunctionPainting(shown.shape(), shown.laid(), place, shown.ink())));
        setLayoutConstraint(this, junctions, junctions.getBounds().getCopy());
    }

    /** Dragging over bare paper selects what lies in the frame. */
    @Override
    public DragTracker getDragTracker(Request request) {
        return new MarqueeDragTracker();
    }
}
