package org.coursewright.layout.ui.plan.paint;

import org.coursewright.layout.ui.plan.shape.StoreyShape;
import org.eclipse.draw2d.Graphics;

/** Draws the walls of another storey under a plan. */
record UnderlayPainter(StoreyShape storey, PlanPlace place, PlanInk ink) {

    void paint(Graphics graphics) {
        graphics.setBackgroundColor(ink.underlay());
        graphics.setForegroundColor(ink.basic().faint());
        storey.walls().values().forEach(wall -> graphics.fillPolygon(place.pixels(wall.outline())));
        storey.walls().values().forEach(wall -> wall.edges().forEach(
                edge -> graphics.drawLine(place.pixel(edge.from()), place.pixel(edge.to()))));
    }
}
