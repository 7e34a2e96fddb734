package org.coursewright.layout.ui.plan.editor;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

import org.coursewright.diagram.ui.scale.DiagramScale;
import org.coursewright.layout.ui.plan.paint.DimensionRow;
import org.coursewright.layout.ui.plan.shape.PlanBounds;
import org.coursewright.layout.ui.plan.shape.PlanPoint;
import org.coursewright.layout.ui.plan.shape.PlanVector;
import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;

/** Shows the whole plan as large as possible, in the middle, and keeps it so while the window changes, until somebody zooms. */
final class PlanFit {

    /** Room for rows of dimensions and their words. */
    private static final int MARGIN = DimensionRow.FIRST.distance() + 3 * DimensionRow.APART + 8;

    private final GraphicalViewer viewer;
    private final Supplier<Optional<PlanBounds>> bounds;
    private final Consumer<PlanPoint> corner;
    private boolean kept = true;
    private boolean fitting;
    private Point fitted = new Point(0, 0);

    /**
     * @param viewer of the plan
     * @param bounds of what is shown
     * @param corner told which point is to be in the upper left corner; shows everything anew
     */
    PlanFit(GraphicalViewer viewer, Supplier<Optional<PlanBounds>> bounds, Consumer<PlanPoint> corner) {
        this.viewer = viewer;
        this.bounds = bounds;
        this.corner = corner;
        viewer.getControl().addListener(SWT.Resize, event -> again());
        DiagramScale.zoom(viewer).addZoomListener(zoom -> kept &= fitting);
    }

    private void again() {
        if (kept && !fitted.equals(viewer.getControl().getSize())) {
            now();
        }
    }

    /** Fits the plan. */
    void now() {
        Point area = viewer.getControl().getSize();
        if (area.x > 2 * MARGIN && area.y > 2 * MARGIN) {
            fitted = area;
            bounds.get().ifPresent(box -> fit(box, area));
        }
    }

    private void fit(PlanBounds box, Point area) {
        DiagramScale wide = DiagramScale.fitting(box.width(), area.x - 2 * MARGIN);
        DiagramScale high = DiagramScale.fitting(box.depth(), area.y - 2 * MARGIN);
        fitting = true;
        DiagramScale.zoom(viewer).setZoom(Math.min(wide.zoom(), high.zoom()));
        fitting = false;
        kept = true;
        DiagramScale scale = DiagramScale.of(viewer);
        corner.accept(box.centre().plus(new PlanVector(scale.toLength(-area.x / 2), scale.toLength(area.y / 2))));
        ((FigureCanvas) viewer.getControl()).getViewport().setViewLocation(0, 0);
    }
}
