package org.coursewright.layout.ui.plan.paint;

import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.PointList;

/** Tells whether a pixel lies in a polygon: a ray from it to the right then meets an odd number of sides. */
final class PolygonHit {

    private PolygonHit() {
    }

    static boolean isIn(PointList polygon, int x, int y) {
        boolean inside = false;
        for (int i = 0; i < polygon.size(); i++) {
            Point one = polygon.getPoint(i);
            Point next = polygon.getPoint((i + 1) % polygon.size());
            boolean spans = one.y > y != next.y > y;
            if (spans && x < (double) (next.x - one.x) * (y - one.y) / (next.y - one.y) + one.x) {
                inside = !inside;
            }
        }
        return inside;
    }
}
