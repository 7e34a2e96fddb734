package org.coursewright.layout.ui.editor;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

import org.coursewright.diagram.ui.scale.DiagramScale;
import org.coursewright.layout.ui.chain.ChainExtent;
import org.coursewright.layout.ui.paint.FacePainter;
import org.coursewright.measure.Length;
import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.geometry.Insets;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;

/** Shows the whole wall as large as possible, and keeps it so while the window changes, until somebody zooms. */
final class FaceFit {

    private final GraphicalViewer viewer;
    private final Supplier<Optional<ChainExtent>> extent;
    private final Supplier<Optional<Length>> course;
    private final Runnable refresh;
    private boolean kept = true;
    private boolean fitting;
    private Fitted fitted = new Fitted(new Point(0, 0), Optional.empty());

    /**
     * @param viewer of the wall
     * @param extent of what is shown
     * @param course how high a course is
     * @param refresh places everything anew
     */
    FaceFit(GraphicalViewer viewer, Supplier<Optional<ChainExtent>> extent, Supplier<Optional<Length>> course,
            Runnable refresh) {
        this.viewer = viewer;
        this.extent = extent;
        this.course = course;
        this.refresh = refresh;
        viewer.getControl().addListener(SWT.Resize, event -> again());
        DiagramScale.zoom(viewer).addZoomListener(zoom -> kept &= fitting);
    }

    /**
     * Fits the wall again, unless somebody has zoomed. Only the size of the whole canvas counts: what is left beside scroll
     * bars changes by fitting.
     */
    void again() {
        Fitted wanted = new Fitted(viewer.getControl().getSize(), extent.get().map(FaceFit::size));
        if (kept && !wanted.equals(fitted)) {
            fitted = wanted;
            now();
        }
    }

    private static List<Length> size(ChainExtent shown) {
        return List.of(shown.width(), shown.highest());
    }

    /** What the wall has been fitted into, and how large it was. */
    private record Fitted(Point canvas, Optional<List<Length>> wall) {
    }

    /** Enlarges the wall until a course is as high as a line of words; without words, fits it again. */
    void forWords(boolean written) {
        if (!written) {
            now();
            return;
        }
        int line = FigureUtilities.getTextExtents("0", viewer.getControl().getFont()).height;
        course.get().map(each -> DiagramScale.fitting(each, line + 1).zoom())
                .filter(zoom -> zoom > DiagramScale.zoom(viewer).getZoom()).ifPresent(zoom -> {
                    DiagramScale.zoom(viewer).setZoom(zoom);
                    refresh.run();
                });
    }

    /** Fits the wall. */
    void now() {
        extent.get().ifPresent(this::fit);
    }

    private void fit(ChainExtent shown) {
        Point area = viewer.getControl().getSize();
        Insets margin = FacePainter.MARGIN;
        if (area.x <= margin.getWidth() || area.y <= margin.getHeight()) {
            return;
        }
        DiagramScale wide = DiagramScale.fitting(shown.width(), area.x - margin.getWidth());
        DiagramScale high = DiagramScale.fitting(shown.highest(), area.y - margin.getHeight());
        fitting = true;
        DiagramScale.zoom(viewer).setZoom(Math.min(wide.zoom(), high.zoom()));
        fitting = false;
        kept = true;
        refresh.run();
        ((FigureCanvas) viewer.getControl()).getViewport().setViewLocation(0, 0);
        // what the window has moved while it changed its size may lack a strip
        viewer.getControl().redraw();
    }
}
