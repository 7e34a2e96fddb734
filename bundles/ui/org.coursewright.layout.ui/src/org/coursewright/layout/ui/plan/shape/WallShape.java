package org.coursewright.layout.ui.plan.shape;

import java.util.List;

import org.coursewright.core.geometry.Place;
import org.coursewright.core.geometry.WallFaces;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Wall;

/**
 * A wall as it lies in plan.
 *
 * @param wall of the storey
 * @param from start of its centre line
 * @param to end of its centre line
 * @param module its thickness and steps
 * @param faces its lengths
 * @param outline around its masonry: left face from start to end, then right face back
 * @param edges what is drawn of its faces: interrupted where other walls run in, and with its open ends
 */
public record WallShape(Wall wall, PlanPoint from, PlanPoint to, WallModule module, WallFaces faces,
        List<PlanPoint> outline, List<PlanEdge> edges) {

    public WallShape {
        outline = List.copyOf(outline);
        edges = List.copyOf(edges);
    }

    /** @return where it leads */
    public Heading heading() {
        return Heading.of(from.to(to));
    }

    /** @return its centre line without end */
    public PlanLine line() {
        return new PlanLine(from, heading());
    }

    /** @return from outer start face to outer end face */
    public Length length() {
        return faces.outer();
    }

    /**
     * @param place its start or its end
     * @return that end of the centre line
     */
    public PlanPoint end(Place place) {
        return place == Place.START ? from : to;
    }

    /**
     * @param offset from the outer start face
     * @param left how far to the left of the centre line, negative to the right
     * @return the point there
     */
    public PlanPoint at(Length offset, Length left) {
        Heading heading = heading();
        return from.plus(heading.ahead(offset.minus(faces.startExtension()))).plus(heading.left().ahead(left));
    }

    /**
     * @param point any
     * @return how far from the outer start face it is, along the wall
     */
    public Length offset(PlanPoint point) {
        return heading().along(from.to(point)).plus(faces.startExtension());
    }

    /**
     * @param offset from the outer start face
     * @param width along the wall
     * @return the part of the wall there, from face to face
     */
    public List<PlanPoint> part(Length offset, Length width) {
        Length half = module.half();
        Length end = offset.plus(width);
        return List.of(at(offset, half), at(end, half), at(end, half.negated()), at(offset, half.negated()));
    }

    /** @return the point in its middle */
    public PlanPoint middle() {
        return from.halfway(to);
    }

    /**
     * @param point any
     * @return how far it is from the centre line between the ends
     */
    public Length distance(PlanPoint point) {
        Length along = heading().along(from.to(point));
        if (along.signum() < 0) {
            return from.distance(point);
        }
        return along.isGreaterThan(from.distance(to)) ? to.distance(point) : line().distance(point);
    }
}
