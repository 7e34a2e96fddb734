package org.coursewright.layout.ui.plan.paint;

import java.util.Optional;

import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;

/** Shows a painting. */
public final class PaintedFigure extends Figure {

    private Optional<Painting> painting = Optional.empty();

    /** @param shown what is to be shown from now on, empty for nothing */
    public void show(Optional<? extends Painting> shown) {
        painting = shown.map(each -> each);
        setBounds(painting.map(Painting::bounds).orElseGet(Rectangle::new));
        repaint();
    }

    /** @return what is shown */
    public Optional<Painting> painting() {
        return painting;
    }

    @Override
    public boolean containsPoint(int x, int y) {
        return super.containsPoint(x, y) && painting.filter(each -> each.isAt(x, y)).isPresent();
    }

    @Override
    protected void paintFigure(Graphics graphics) {
        painting.ifPresent(each -> each.paint(graphics));
    }
}
