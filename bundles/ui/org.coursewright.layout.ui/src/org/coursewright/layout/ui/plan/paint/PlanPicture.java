package org.coursewright.layout.ui.plan.paint;

import java.util.List;

import org.coursewright.diagram.ui.picture.Picture;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.graphics.Color;

/** Paintings on a sheet of paper of their own, with a margin around them. */
public final class PlanPicture implements Picture {

    private static final int MARGIN = 16;

    private final List<? extends Painting> paintings;
    private final Color paper;
    private final Rectangle bounds;

    /**
     * @param paintings at least one, in the order in which they are drawn
     * @param paper colour behind them
     */
    public PlanPicture(List<? extends Painting> paintings, Color paper) {
        this.paintings = List.copyOf(paintings);
        this.paper = paper;
        this.bounds = paintings.stream().map(Painting::bounds).reduce((a, b) -> a.getCopy().union(b)).orElseThrow()
                .getExpanded(MARGIN, MARGIN);
    }

    @Override
    public Dimension size() {
        return bounds.getSize();
    }

    @Override
    public void paint(Graphics graphics) {
        graphics.translate(-bounds.x, -bounds.y);
        graphics.setBackgroundColor(paper);
        graphics.fillRectangle(bounds);
        paintings.forEach(each -> each.paint(graphics));
    }
}
