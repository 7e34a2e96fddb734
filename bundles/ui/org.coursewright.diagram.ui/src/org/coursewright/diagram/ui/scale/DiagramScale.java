package org.coursewright.diagram.ui.scale;

import org.coursewright.measure.Length;
import org.eclipse.gef.EditPartViewer;
import org.eclipse.gef.editparts.ZoomManager;

/**
 * How large a diagram is shown: at zoom 1 a pixel is 2 mm.
 * <p>
 * Figures are placed in pixels of the screen, whatever the zoom, so that a line is one pixel wide and text stays as
 * large as it is read best. What is rounded to a pixel is only what is shown; edits go by {@link #toLength} and a step.
 *
 * @param zoom greater than 0
 */
public record DiagramScale(double zoom) {

    private static final long UNITS_PER_PIXEL = 2 * Length.UNITS_PER_MILLIMETRE;

    public DiagramScale {
        if (!(zoom > 0)) {
            throw new IllegalArgumentException("The zoom must be greater than 0, but is %s.".formatted(zoom));
        }
    }

    /**
     * @param viewer whose root is a {@link org.coursewright.diagram.ui.part.DiagramRoot}
     * @return the scale it shows its diagram in
     */
    public static DiagramScale of(EditPartViewer viewer) {
        return new DiagramScale(zoom(viewer).getZoom());
    }

    /**
     * @param viewer whose root is a {@link org.coursewright.diagram.ui.part.DiagramRoot}
     * @return what changes its zoom
     */
    public static ZoomManager zoom(EditPartViewer viewer) {
        return (ZoomManager) viewer.getProperty(ZoomManager.class.toString());
    }

    /**
     * @param length to be shown on so many pixels, greater than zero
     * @param pixels at least 1
     * @return the scale in which it just fits
     */
    public static DiagramScale fitting(Length length, int pixels) {
        return new DiagramScale((double) Math.max(1, pixels) * UNITS_PER_PIXEL / Math.max(1, length.units()));
    }

    /**
     * @param length any
     * @return the nearest whole number of pixels
     */
    public int toPixels(Length length) {
        return (int) Math.round(exactPixels(length));
    }

    /**
     * @param length any
     * @return how many pixels it is, with the part of a pixel that is left
     */
    public double exactPixels(Length length) {
        return length.units() * zoom / UNITS_PER_PIXEL;
    }

    /**
     * @param pixels any number
     * @return how long they are, to the nearest 1/320 mm
     */
    public Length toLength(int pixels) {
        return Length.ofUnits(Math.round(pixels * UNITS_PER_PIXEL / zoom));
    }
}
