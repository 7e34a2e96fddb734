package org.coursewright.layout.ui.plan.part;

import java.util.function.Supplier;

import org.coursewright.core.geometry.Place;
import org.coursewright.layout.ui.plan.shape.PlanPoint;
import org.eclipse.draw2d.ColorConstants;
import org.eclipse.draw2d.Cursors;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.handles.AbstractHandle;

/** A small square that one end of something is dragged by. */
public final class GripHandle extends AbstractHandle {

    private static final int SIZE = 9;

    private final PlanPart<?> part;
    private final Place place;

    GripHandle(PlanPart<?> part, Place place, Supplier<PlanPoint> at) {
        super(part, figure -> locate(figure, part, at.get()), Cursors.SIZEALL);
        this.part = part;
        this.place = place;
        setPreferredSize(SIZE, SIZE);
        setSize(SIZE, SIZE);
    }

    private static void locate(IFigure figure, PlanPart<?> part, PlanPoint at) {
        Point pixel = part.place().pixel(at);
        figure.setBounds(new Rectangle(pixel.x - SIZE / 2, pixel.y - SIZE / 2, SIZE, SIZE));
    }

    /** @return which end is dragged */
    public Place place() {
        return place;
    }

    @Override
    protected DragTracker createDragTracker() {
        return new GripTracker(part, place);
    }

    @Override
    protected void paintFigure(Graphics graphics) {
        Rectangle box = getBounds();
        graphics.setBackgroundColor(part.state().ink().basic().accent());
        graphics.fillRectangle(box);
        graphics.setForegroundColor(ColorConstants.white);
        graphics.drawRectangle(box.x, box.y, box.width - 1, box.height - 1);
    }
}
