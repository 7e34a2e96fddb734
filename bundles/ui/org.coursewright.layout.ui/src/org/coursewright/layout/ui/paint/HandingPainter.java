package org.coursewright.layout.ui.paint;

import org.coursewright.layout.ui.face.FaceDrawing;
import org.coursewright.layout.ui.handing.HandingWords;
import org.coursewright.measure.Length;
import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.Graphics;

/**
 * Writes under the ends of a wall which wall runs through there in odd courses, unless the wall is too small for the words.
 *
 * @param painter of the wall
 */
record HandingPainter(FacePainter painter) {

    private static final int UNDER = 4;
    private static final int GAP = 12;

    void paint(Graphics graphics) {
        FaceDrawing drawing = painter.drawing();
        graphics.setForegroundColor(painter.ink().basic().text());
        int left = painter.place().x(Length.ZERO);
        int right = painter.place().x(drawing.face().length());
        int y = painter.place().foot() + UNDER;
        String start = drawing.corners().start().map(HandingWords::of).orElse("");
        String end = drawing.corners().end().map(HandingWords::of).orElse("");
        int wide = FigureUtilities.getTextExtents(end, graphics.getFont()).width;
        if (FigureUtilities.getTextExtents(start, graphics.getFont()).width + GAP + wide <= right - left) {
            graphics.drawText(start, left, y);
            graphics.drawText(end, right - wide, y);
        }
    }
}
