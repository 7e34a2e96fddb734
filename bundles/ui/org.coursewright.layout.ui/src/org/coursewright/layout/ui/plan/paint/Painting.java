package org.coursewright.layout.ui.plan.paint;

import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;

/** Something that is drawn at its place on paper. */
public interface Painting {

    /** @return pixels that it covers */
    Rectangle bounds();

    /** @param graphics to draw on */
    void paint(Graphics graphics);

    /**
     * @param x pixels to the right
     * @param y pixels down
     * @return whether it is there that one points at it
     */
    boolean isAt(int x, int y);
}
