package org.coursewright.diagram.ui.picture;

import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Dimension;

/** Something that can be painted into a picture of its own. */
public interface Picture {

    /** @return width and height in pixels */
    Dimension size();

    /** @param graphics on which it is painted, from (0, 0) to its size */
    void paint(Graphics graphics);
}
