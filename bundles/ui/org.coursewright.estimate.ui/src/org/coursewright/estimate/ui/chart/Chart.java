package org.coursewright.estimate.ui.chart;

import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;

/** A chart that fits itself into whatever room it is given. */
public interface Chart {

    /** @return pixels that it needs from top to bottom */
    int height();

    /**
     * @param graphics with the font to write in
     * @param room that there is
     * @param ink to paint with
     */
    void paint(Graphics graphics, Rectangle room, ChartInk ink);

    /** @return the same in words, for those who hear the screen */
    String spoken();
}
