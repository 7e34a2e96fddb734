package org.coursewright.layout.ui.paint;

import org.coursewright.core.bond.WallHanding;
import org.coursewright.layout.ui.face.FaceDrawing;
import org.coursewright.layout.ui.handing.HandingMenu;
import org.coursewright.measure.Length;
import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.Graphics;

/**
 * Writes under the ends of a wall which wall runs through there in odd courses.
 *
 * @param painter of the wall
 */
record HandingPainter(FacePainter painter) {

    private static final int UNDER = 4;

    void paint(Graphics graphics) {
        FaceDrawing drawing = painter.drawing();
        graphics.setForegroundColor(painter.ink().basic().text());
        int left = painter.place().x(Length.ZERO);
        int right = painter.place().x(drawing.face().length());
        drawing.corners().start().ifPresent(handing -> write(graphics, handing, left, 0));
        drawing.corners().end().ifPresent(handing -> write(graphics, handing, right, 1));
    }

    private void write(Graphics graphics, WallHanding handing, int x, int widthsLeft) {
        String words = HandingMenu.words(handing);
        int width = FigureUtilities.getTextExtents(words, graphics.getFont()).width;
        graphics.drawText(words, x - widthsLeft * width, painter.place().foot() + UNDER);
    }
}
