package org.coursewright.layout.ui.plan.paint;

import java.util.Collection;

import org.coursewright.diagram.ui.scale.DiagramScale;
import org.coursewright.layout.ui.plan.shape.Heading;
import org.coursewright.layout.ui.plan.shape.PlanPoint;
import org.coursewright.measure.Length;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.PointList;

/**
 * Where points of the plan are on paper; north is up.
 *
 * @param scale pixels of lengths
 * @param left pixels to the right at which the origin is
 * @param top pixels down at which the origin is
 * @param lettering of words
 */
public record PlanPlace(DiagramScale scale, int left, int top, Lettering lettering) {

    /**
     * @param scale pixels of lengths
     * @param corner point of the plan in the upper left corner of the paper
     * @param lettering of words
     * @return where the points of the plan are
     */
    public static PlanPlace of(DiagramScale scale, PlanPoint corner, Lettering lettering) {
        return new PlanPlace(scale, -scale.toPixels(corner.x()), scale.toPixels(corner.y()), lettering);
    }

    /**
     * @param point of the plan
     * @return its pixel
     */
    public Point pixel(PlanPoint point) {
        return new Point(x(point.x()), y(point.y()));
    }

    /**
     * @param easting any
     * @return pixels to the right
     */
    public int x(Length easting) {
        return left + scale.toPixels(easting);
    }

    /**
     * @param northing any
     * @return pixels down
     */
    public int y(Length northing) {
        return top - scale.toPixels(northing);
    }

    /**
     * @param pixel any
     * @return the point of the plan that is there
     */
    public PlanPoint point(Point pixel) {
        return new PlanPoint(scale.toLength(pixel.x - left), scale.toLength(top - pixel.y));
    }

    /**
     * @param points of the plan
     * @return their pixels
     */
    public PointList pixels(Collection<PlanPoint> points) {
        PointList pixels = new PointList(points.size());
        points.forEach(point -> pixels.addPoint(pixel(point)));
        return pixels;
    }

    /**
     * @param from a pixel
     * @param heading on the plan
     * @param pixels how far
     * @return the pixel there
     */
    public static Point ahead(Point from, Heading heading, int pixels) {
        return new Point(from.x + (int) Math.round(heading.east() * pixels),
                from.y - (int) Math.round(heading.north() * pixels));
    }
}
