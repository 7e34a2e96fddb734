package org.coursewright.layout.ui.plan.paint;

import org.coursewright.measure.Length;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;

/** Draws lines of a grid, at every step or at as many steps as leave room between them. */
record GridPainter(Length step, PlanPlace place, PlanInk ink) {

    private static final int LEAST_APART = 9;

    void paint(Graphics graphics, Rectangle clip) {
        Length apart = step;
        while (place.scale().toPixels(apart) < LEAST_APART) {
            apart = apart.times(2);
        }
        graphics.setForegroundColor(ink.grid());
        Length first = floor(place.point(new Point(clip.x, clip.y)).x(), apart);
        for (Length x = first; place.x(x) <= clip.right(); x = x.plus(apart)) {
            graphics.drawLine(place.x(x), clip.y, place.x(x), clip.bottom());
        }
        Length lowest = floor(place.point(new Point(clip.x, clip.bottom())).y(), apart);
        for (Length y = lowest; place.y(y) >= clip.y; y = y.plus(apart)) {
            graphics.drawLine(clip.x, place.y(y), clip.right(), place.y(y));
        }
    }

    private static Length floor(Length length, Length apart) {
        return apart.times(Math.floorDiv(length.units(), apart.units()));
    }
}
