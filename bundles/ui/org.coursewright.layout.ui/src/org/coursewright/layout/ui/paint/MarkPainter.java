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
        marked.in(painter.drawing()).filter(piece -> piece.course() <= painter.upTo()).forEach(piece -> painter
                .drawing().course(piece.course()).map(course -> box(course, piece)).filter(clip::intersects).ifPresent(
                        box -> point(graphics, box)));
        graphics.setLineWidth(1);
    }

    private Rectangle box(FaceCourse course, PlacedPiece piece) {
        return painter.place().box(piece.from(), piece.to(), course.unitBottom(), course.top());
    }

    /** Where pieces are small the frame is thin, so that their fill is still seen. */
    private static void point(Graphics graphics, Rectangle box) {
        int least = Math.min(box.width, box.height);
        int frame = least >= LEAST_FOR_DOT ? FRAME : 1;
        graphics.setLineWidth(frame);
        graphics.drawRectangle(box.x + frame / 2, box.y + frame / 2, box.width - frame, box.height - frame);
        if (least >= LEAST_FOR_DOT) {
            graphics.fillOval(box.x + (box.width - DOT) / 2, box.y + (box.height - DOT) / 2, DOT, DOT);
        }
    }
}
