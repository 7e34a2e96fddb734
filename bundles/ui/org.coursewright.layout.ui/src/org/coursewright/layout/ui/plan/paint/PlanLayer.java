package org.coursewright.layout.ui.plan.paint;

import java.util.Optional;

import org.coursewright.layout.ui.plan.shape.StoreyShape;
import org.coursewright.measure.Length;
import org.eclipse.draw2d.FreeformLayer;
import org.eclipse.draw2d.FreeformLayout;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;

/** The paper of a plan, with the grid and another storey underneath. */
public final class PlanLayer extends FreeformLayer {

    private Optional<GridPainter> grid = Optional.empty();
    private Optional<UnderlayPainter> underlay = Optional.empty();

    /** A layer without grid and underlay. */
    public PlanLayer() {
        setLayoutManager(new FreeformLayout());
    }

    /**
     * @param place of the plan on paper
     * @param ink to draw with
     * @param step of the grid, empty for none
     * @param under storey underneath, empty for none
     */
    public void show(PlanPlace place, PlanInk ink, Optional<Length> step, Optional<StoreyShape> under) {
        grid = step.map(each -> new GridPainter(each, place, ink));
        underlay = under.map(each -> new UnderlayPainter(each, place, ink));
        repaint();
    }

    @Override
    protected void paintFigure(Graphics graphics) {
        grid.ifPresent(each -> each.paint(graphics, graphics.getClip(new Rectangle())));
        underlay.ifPresent(each -> each.paint(graphics));
    }
}
