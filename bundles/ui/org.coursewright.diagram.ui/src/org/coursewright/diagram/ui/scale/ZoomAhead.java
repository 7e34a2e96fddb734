package org.coursewright.diagram.ui.scale;

import org.eclipse.draw2d.ScalableFigure;
import org.eclipse.draw2d.ScalableFreeformLayeredPane;
import org.eclipse.draw2d.Viewport;
import org.eclipse.gef.editparts.ZoomManager;
import org.eclipse.ui.IStartup;

/**
 * Makes a zoom that nobody uses, off the window's thread, once the window is there. A zoom words its levels with a library
 * of some two hundred classes, which the first diagram would load while the window waits.
 */
public final class ZoomAhead implements IStartup {

    /** Called by the platform. */
    public ZoomAhead() {
        // nothing is kept
    }

    @Override
    public void earlyStartup() {
        ScalableFigure nothing = new ScalableFreeformLayeredPane();
        new ZoomManager(nothing, new Viewport()).getZoomAsText();
    }
}
