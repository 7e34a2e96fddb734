package org.coursewright.diagram.ui.part;

import org.eclipse.draw2d.FreeformLayer;
import org.eclipse.draw2d.ScalableFreeformLayeredPane;
import org.eclipse.gef.editparts.ScalableFreeformRootEditPart;

/**
 * The root of every diagram. It has a zoom, but does not enlarge what figures paint: figures are placed anew by the
 * {@link org.coursewright.diagram.ui.scale.DiagramScale}, so that lines stay thin and text stays readable at every zoom.
 */
public final class DiagramRoot extends ScalableFreeformRootEditPart {

    private static final double[] ZOOM_LEVELS = {0.01, 0.02, 0.03, 0.05, 0.075, 0.1, 0.15, 0.2, 0.25, 0.35, 0.5, 0.75,
            1,
            1.5, 2, 3, 4};

    /** A root at zoom 1. */
    public DiagramRoot() {
        getZoomManager().setZoomLevels(ZOOM_LEVELS);
    }

    @Override
    protected ScalableFreeformLayeredPane createScaledLayers() {
        ScalableFreeformLayeredPane layers = new PlacedLayers();
        layers.add(createGridLayer(), GRID_LAYER);
        layers.add(getPrintableLayers(), PRINTABLE_LAYERS);
        FreeformLayer feedback = new FreeformLayer();
        feedback.setEnabled(false);
        layers.add(feedback, SCALED_FEEDBACK_LAYER);
        return layers;
    }

    /** Layers that know the scale but leave it to their figures. */
    private static final class PlacedLayers extends ScalableFreeformLayeredPane {

        private double told = 1;

        @Override
        public double getScale() {
            return told;
        }

        @Override
        public void setScale(double scale) {
            told = scale;
            revalidate();
            repaint();
        }
    }
}
