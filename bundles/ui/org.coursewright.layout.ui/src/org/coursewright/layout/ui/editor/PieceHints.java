package org.coursewright.layout.ui.editor;

import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

import org.coursewright.diagram.ui.scale.DiagramScale;
import org.coursewright.layout.ui.face.FaceCourse;
import org.coursewright.layout.ui.face.FaceDrawing;
import org.coursewright.layout.ui.face.PlacedPiece;
import org.coursewright.layout.ui.paint.FacePlace;
import org.coursewright.layout.ui.part.FaceState;
import org.coursewright.layout.ui.part.WallPart;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.MouseAdapter;
import org.eclipse.swt.events.MouseEvent;
import org.eclipse.swt.events.MouseMoveListener;

/** Says what the mouse is over, and selects the piece that is clicked on. */
final class PieceHints extends MouseAdapter implements MouseMoveListener {

    private final GraphicalViewer viewer;
    private final Supplier<FaceState> state;
    private final Consumer<Optional<PlacedPiece>> select;

    /**
     * @param viewer of the wall
     * @param state what is shown
     * @param select told the piece that was clicked on, or none
     */
    PieceHints(GraphicalViewer viewer, Supplier<FaceState> state, Consumer<Optional<PlacedPiece>> select) {
        this.viewer = viewer;
        this.state = state;
        this.select = select;
    }

    /** From now on follows the mouse. */
    void connect() {
        viewer.getControl().addMouseMoveListener(this);
        viewer.getControl().addMouseListener(this);
    }

    @Override
    public void mouseMove(MouseEvent event) {
        boolean dragging = (event.stateMask & SWT.BUTTON_MASK) != 0;
        String hint = dragging ? null : state.get().drawing().flatMap(drawing -> hint(drawing, event)).orElse(null);
        if (!Objects.equals(hint, viewer.getControl().getToolTipText())) {
            viewer.getControl().setToolTipText(hint);
        }
    }

    private Optional<String> hint(FaceDrawing drawing, MouseEvent event) {
        FacePlace place = place();
        Point at = at(event);
        LengthFormat format = state.get().format();
        Length along = place.along(at.x);
        Length height = place.height(at.y);
        if (drawing.courseAt(height).filter(course -> !isLaidUp(course)).isPresent()) {
            return Optional.empty();
        }
        return new ShortLapHint(drawing, format).at(along, height)
                .or(() -> pieceAt(drawing, event).map(new PieceWords(format, Optional.of(drawing))::of))
                .or(() -> new UnfillableHint(drawing, format).at(along, height));
    }

    @Override
    public void mouseDown(MouseEvent event) {
        viewer.getControl().setToolTipText(null);
        state.get().drawing().ifPresent(drawing -> select.accept(
                overOpening(event) ? Optional.empty() : pieceAt(drawing, event)));
    }

    private boolean overOpening(MouseEvent event) {
        return !(viewer.findObjectAt(new Point(event.x, event.y)) instanceof WallPart);
    }

    private Optional<PlacedPiece> pieceAt(FaceDrawing drawing, MouseEvent event) {
        Point at = at(event);
        return drawing.courseAt(place().height(at.y)).filter(this::isLaidUp)
                .flatMap(course -> course.pieceAt(place().along(at.x)));
    }

    private boolean isLaidUp(FaceCourse course) {
        return course.course().number() <= state.get().upTo();
    }

    private FacePlace place() {
        return state.get().place(DiagramScale.of(viewer));
    }

    private Point at(MouseEvent event) {
        Point point = new Point(event.x, event.y);
        if (viewer.getContents() instanceof WallPart wall) {
            wall.face().translateToRelative(point);
        }
        return point;
    }
}
