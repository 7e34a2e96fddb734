package org.coursewright.layout.ui.plan.editor;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;

import org.coursewright.diagram.ui.scale.DiagramScale;
import org.coursewright.layout.ui.plan.shape.PlanBounds;
import org.coursewright.layout.ui.plan.shape.PlanPoint;
import org.coursewright.measure.Length;
import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Control;

/** Shows the whole plan as large as possible, in the middle, and keeps it so while the window changes, until somebody zooms. */
final class PlanFit {

    private static final int MARGIN = 12;
    private static final int ROUNDS = 14;
    private static final double SMALLER = 0.94;
    private static final int LEAST = 100;

    /** What is shown of a storey without walls: room for a small building. */
    private static final PlanBounds EMPTY = new PlanBounds(PlanPoint.ORIGIN,
            new PlanPoint(Length.ofMillimetres(12_000), Length.ofMillimetres(9000)));

    private final GraphicalViewer viewer;
    private final Supplier<Optional<PlanBounds>> bounds;
    private final Function<DiagramScale, Optional<Rectangle>> covered;
    private final Consumer<PlanPoint> corner;
    private boolean kept = true;
    private boolean fitting;
    private Point fitted = new Point(0, 0);

    /**
     * @param viewer of the plan
     * @param bounds of the walls that are shown
     * @param covered pixels of everything that is shown at a scale, from the origin of the plan
     * @param corner told which point is to be in the upper left corner; shows everything anew
     */
    PlanFit(GraphicalViewer viewer, Supplier<Optional<PlanBounds>> bounds,
            Function<DiagramScale, Optional<Rectangle>> covered, Consumer<PlanPoint> corner) {
        this.viewer = viewer;
        this.bounds = bounds;
        this.covered = covered;
        this.corner = corner;
        viewer.getControl().addListener(SWT.Resize, event -> again());
        DiagramScale.zoom(viewer).addZoomListener(zoom -> kept &= fitting);
    }

    private void again() {
        if (!fitted.equals(viewer.getControl().getSize())) {
            writtenAnew();
        }
    }

    /** Words that are written in another unit take other room: fits the plan again, unless somebody has zoomed. */
    void writtenAnew() {
        if (kept) {
            now();
        }
    }

    /** Fits the plan. */
    void now() {
        Point area = viewer.getControl().getSize();
        if (area.x > LEAST && area.y > LEAST) {
            fitted = area;
            fit(bounds.get().orElse(EMPTY), area);
        }
    }

    /** Dimension strings are as large at every scale, so the scale is tried for, from the greatest down. */
    private void fit(PlanBounds box, Point area) {
        DiagramScale wide = DiagramScale.fitting(box.width(), area.x - 2 * MARGIN);
        DiagramScale high = DiagramScale.fitting(box.depth(), area.y - 2 * MARGIN);
        DiagramScale scale = new DiagramScale(Math.min(wide.zoom(), high.zoom()));
        for (int i = 0; i < ROUNDS && !fits(scale, area); i++) {
            scale = new DiagramScale(scale.zoom() * SMALLER);
        }
        fitting = true;
        DiagramScale.zoom(viewer).setZoom(scale.zoom());
        fitting = false;
        kept = true;
        DiagramScale shown = DiagramScale.of(viewer);
        Rectangle all = covered.apply(shown).orElseGet(
                () -> new Rectangle(0, -shown.toPixels(box.depth()), shown.toPixels(box.width()),
                        shown.toPixels(box.depth())));
        corner.accept(new PlanPoint(shown.toLength(all.getCenter().x - area.x / 2),
                shown.toLength(area.y / 2 - all.getCenter().y)));
        ((FigureCanvas) viewer.getControl()).getViewport().setViewLocation(0, 0);
        redrawOnceLaidOut(viewer.getControl());
    }

    /** What the window moves after it has changed its size may lack a strip; it moves it when figures are laid out. */
    private static void redrawOnceLaidOut(Control control) {
        control.getDisplay().asyncExec(() -> {
            if (!control.isDisposed()) {
                control.redraw();
            }
        });
    }

    private boolean fits(DiagramScale scale, Point area) {
        return covered.apply(scale)
                .filter(all -> all.width + 2 * MARGIN > area.x || all.height + 2 * MARGIN > area.y).isEmpty();
    }
}
