package org.coursewright.layout.ui.paint;

import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;

/** Fills areas with slanting lines. */
final class Hatch {

    private Hatch() {
    }

    /** Draws lines from the lower left to the upper right, so many pixels apart, within a box. */
    static void draw(Graphics graphics, Rectangle box, int apart) {
        for (int at = apart; at < box.width + box.height; at += apart) {
            int fromX = Math.max(0, at - box.height);
            int toX = Math.min(at, box.width);
            graphics.drawLine(box.x + fromX, box.y + at - fromX, box.x + toX, box.y + at - toX);
        }
    }
}
