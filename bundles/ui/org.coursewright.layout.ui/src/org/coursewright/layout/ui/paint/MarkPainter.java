package org.coursewright.layout.ui.paint;

import org.coursewright.layout.ui.face.FaceCourse;
import org.coursewright.layout.ui.face.MarkedPieces;
import org.coursewright.layout.ui.face.PlacedPiece;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;

/**
 * Points out pieces in a wall that has been drawn: a frame and a dot in the middle, so that they are found by form and not by
 * colour alone.
 *
 * @param painter of the wall
 * @param marked which pieces
 */
public record MarkPainter(FacePainter painter, MarkedPieces marked) {

    private static final int FRAME = 2;
    private static final int LEAST_FOR_DOT = 10;
    private static final int DOT = 6;

    /**
     * @param graphics on which the wall has been drawn
     * @param clip what has to be drawn
     */
    public void paint(Graphics graphics, Rectangle clip) {
        graphics.setForegroundColor(painter.ink().basic().accent());
        graphics.setBackgroundColor(painter.ink().basic().accent());
        graphics.setLineWidth(FRAME);
        marked.in(painter.drawing()).filter(piece -> piece.course() <= painter.upTo()).forEach(piece -> painter
                .drawing().course(piece.course()).map(course -> box(course, piece)).filter(clip::intersects).ifPresent(
                        box -> point(graphics, box)));
        graphics.setLineWidth(1);
    }

    private Rectangle box(FaceCourse course, PlacedPiece piece) {
        return painter.place().box(piece.from(), piece.to(), course.unitBottom(), course.top());
    }

    /** The frame lies half on the joints around the piece, so that the fill of small pieces is still seen. */
    private static void point(Graphics graphics, Rectangle box) {
        graphics.drawRectangle(box.x, box.y, box.width, box.height);
        if (Math.min(box.width, box.height) >= LEAST_FOR_DOT) {
            graphics.fillOval(box.x + (box.width - DOT) / 2, box.y + (box.height - DOT) / 2, DOT, DOT);
        }
    }
}
