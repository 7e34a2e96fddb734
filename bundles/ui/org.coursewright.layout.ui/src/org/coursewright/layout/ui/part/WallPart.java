package org.coursewright.layout.ui.part;

import java.util.List;
import java.util.function.Supplier;

import org.coursewright.diagram.ui.part.GroundPart;
import org.coursewright.layout.ui.chain.ChainFigure;
import org.coursewright.layout.ui.paint.FacePainter;
import org.coursewright.layout.ui.paint.FacePlace;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;
import org.eclipse.draw2d.FreeformLayer;
import org.eclipse.draw2d.FreeformLayout;
import org.eclipse.draw2d.IFigure;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.GraphicalEditPart;
import org.eclipse.gef.Request;
import org.eclipse.gef.tools.SelectEditPartTracker;

/** A wall, seen from its face: all its pieces in one figure, its openings in parts over it. */
public final class WallPart extends GroundPart<Wall> {

    private final Supplier<FaceState> state;
    private final FaceFigure face = new FaceFigure();
    private List<ChainFigure> beside = List.of();

    /**
     * @param wall to be shown
     * @param state what else the editor shows
     */
    public WallPart(Wall wall, Supplier<FaceState> state) {
        super(wall);
        this.state = state;
    }

    /** @return the figure of all pieces */
    public FaceFigure face() {
        return face;
    }

    @Override
    protected IFigure createFigure() {
        FreeformLayer layer = new FreeformLayer();
        layer.setLayoutManager(new FreeformLayout());
        layer.add(face);
        return layer;
    }

    @Override
    protected List<Opening> parts() {
        return element().getOpenings();
    }

    /** Puts openings over the figure of all pieces. */
    @Override
    protected void addChildVisual(EditPart child, int index) {
        getContentPane().add(((GraphicalEditPart) child).getFigure(), index + 1 + beside.size());
    }

    @Override
    protected void refreshVisuals() {
        FaceState shown = state.get();
        FacePlace place = shown.place(scale());
        face.show(shown.drawing().map(drawing -> new FacePainter(drawing, place, shown.ink(), shown.format(),
                shown.upTo())), shown.selected(), shown.marked(), shown.gauges());
        showChain(shown, place);
        setLayoutConstraint(this, face, face.getBounds().getCopy());
    }

    /** Walls beside this one are drawn anew each time; there are few of them. */
    private void showChain(FaceState shown, FacePlace place) {
        beside.forEach(getFigure()::remove);
        beside = shown.drawing().map(drawing -> new FacePainter(drawing, place, shown.ink(), shown.format(),
                shown.upTo() < drawing.courses().size() ? shown.upTo() : Integer.MAX_VALUE))
                .map(painter -> shown.chain().stream().map(link -> new ChainFigure(link, painter)).toList())
                .orElse(List.of());
        beside.forEach(wall -> getFigure().add(wall, wall.getBounds().getCopy(), 0));
    }

    /** @return the walls that are shown beside this one */
    public List<ChainFigure> beside() {
        return List.copyOf(beside);
    }

    /** The wall can be selected and not be dragged. */
    @Override
    public DragTracker getDragTracker(Request request) {
        return new SelectEditPartTracker(this);
    }
}
