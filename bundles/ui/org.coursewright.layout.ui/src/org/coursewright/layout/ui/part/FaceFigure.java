package org.coursewright.layout.ui.part;

import java.util.Optional;

import org.coursewright.layout.ui.face.FaceDrawing;
import org.coursewright.layout.ui.face.MarkedPieces;
import org.coursewright.layout.ui.face.PlacedPiece;
import org.coursewright.layout.ui.paint.FaceChange;
import org.coursewright.layout.ui.paint.FacePainter;
import org.coursewright.layout.ui.paint.GaugePainter;
import org.coursewright.layout.ui.paint.MarkPainter;
import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;

/** The one figure that shows a wall with all its pieces. */
public final class FaceFigure extends Figure {

    private Optional<FacePainter> painter = Optional.empty();
    private Optional<PlacedPiece> selected = Optional.empty();
    private Optional<MarkPainter> marks = Optional.empty();
    private boolean gauges;

    void show(Optional<FacePainter> shown, Optional<PlacedPiece> piece, Optional<MarkedPieces> pieces,
            boolean withGauges) {
        Optional<MarkPainter> marked = shown.flatMap(each -> pieces.map(which -> new MarkPainter(each, which)));
        boolean onlyLaidAnew = gauges == withGauges && piece.equals(selected) && marked.isEmpty() && marks.isEmpty()
                && painter.isPresent();
        Optional<Rectangle> area = shown.filter(each -> onlyLaidAnew)
                .map(each -> new FaceChange(painter.orElseThrow(), each).area());
        painter = shown;
        selected = piece;
        marks = marked;
        gauges = withGauges;
        setBounds(shown.map(FacePainter::bounds).orElseGet(Rectangle::new));
        area.ifPresentOrElse(this::repaint, this::repaint);
    }

    /** @return how the wall is laid that is shown, empty if there is none */
    public Optional<FaceDrawing> drawing() {
        return painter.map(FacePainter::drawing);
    }

    /** @return how many pieces are shown */
    public long pieces() {
        return painter.stream().flatMap(each -> each.drawing().courses().stream().limit(each.upTo()))
                .mapToLong(course -> course.pieces().size()).sum();
    }

    @Override
    protected void paintFigure(Graphics graphics) {
        painter.ifPresent(each -> each.paint(graphics, graphics.getClip(new Rectangle()), selected));
        painter.filter(each -> gauges).map(GaugePainter::new)
                .ifPresent(each -> each.paint(graphics, graphics.getClip(new Rectangle())));
        marks.ifPresent(each -> each.paint(graphics, graphics.getClip(new Rectangle())));
    }
}
