package org.coursewright.layout.ui.plan.paint;

import org.coursewright.layout.ui.plan.shape.Heading;
import org.coursewright.layout.ui.plan.shape.WallShape;
import org.coursewright.measure.Length;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Point;

/** A mark that is to stand upright beside a wall, close to its face. */
record MarkBeside(String mark, WallShape wall, PlanPlace place) {

    private static final int GAP = 4;

    /** Opposite an offset from the outer start face, but moved on along the wall by a share of the mark's own extent. */
    SlantedText at(Length offset, boolean left, double moved) {
        Heading heading = wall.heading();
        Heading away = left ? heading.left() : heading.left().reversed();
        Point face = place.pixel(wall.at(offset, left ? wall.module().half() : wall.module().half().negated()));
        Point slid = PlanPlace.ahead(face, heading, (int) Math.round(moved * 2 * reach(heading)));
        return new SlantedText(mark, PlanPlace.ahead(slid, away, reach(away) + GAP), 0, place.lettering());
    }

    /** Pixels from its middle to where it ends in a direction. */
    private int reach(Heading heading) {
        Dimension size = place.lettering().size(mark);
        return (int) Math
                .round(Math.abs(heading.east()) * size.width / 2 + Math.abs(heading.north()) * size.height / 2);
    }
}
