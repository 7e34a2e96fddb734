package org.coursewright.layout.ui.paint;

import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.graphics.Color;

/** What is drawn on a wall besides pieces, alike in the wall and in its legend. */
final class FaceSymbols {

    private static final int TROUBLE_HATCH = 7;
    private static final int BEARING_HATCH = 12;
    private static final int MARK = 4;

    private FaceSymbols() {
    }

    static void opening(Graphics graphics, FaceInk ink, Rectangle box) {
        fill(graphics, ink.basic().paper(), box);
        outline(graphics, ink.basic().line(), box);
    }

    static void bearing(Graphics graphics, FaceInk ink, Rectangle box) {
        fill(graphics, ink.bearing(), box);
        outline(graphics, ink.basic().line(), box);
        Hatch.draw(graphics, box, BEARING_HATCH);
    }

    static void other(Graphics graphics, FaceInk ink, Rectangle box) {
        fill(graphics, ink.other(), box);
        outline(graphics, ink.basic().faint(), box);
    }

    static void unfillable(Graphics graphics, FaceInk ink, Rectangle box) {
        fill(graphics, ink.basic().paper(), box);
        outline(graphics, ink.basic().warning(), box);
        Hatch.draw(graphics, box, TROUBLE_HATCH);
    }

    /** A diamond, which no part of a wall looks like. */
    static void shortLap(Graphics graphics, FaceInk ink, Point at) {
        graphics.setBackgroundColor(ink.basic().warning());
        graphics.fillPolygon(new int[]{at.x - MARK, at.y, at.x, at.y - MARK, at.x + MARK, at.y, at.x, at.y + MARK});
    }

    private static void fill(Graphics graphics, Color color, Rectangle box) {
        graphics.setBackgroundColor(color);
        graphics.fillRectangle(box);
    }

    private static void outline(Graphics graphics, Color color, Rectangle box) {
        graphics.setForegroundColor(color);
        graphics.drawRectangle(box.x, box.y, box.width - 1, box.height - 1);
    }
}
