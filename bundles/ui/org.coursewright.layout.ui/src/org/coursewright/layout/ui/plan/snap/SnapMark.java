package org.coursewright.layout.ui.plan.snap;

import org.coursewright.layout.ui.plan.shape.PlanPoint;

/**
 * Something that a point has been drawn to, to be shown.
 *
 * @param kind what it is
 * @param from where its line begins; the point itself for kinds that are points
 * @param to where its line ends
 */
public record SnapMark(Kind kind, PlanPoint from, PlanPoint to) {

    /** What a point can be drawn to. */
    public enum Kind {
        /** The end of a wall. */
        END,
        /** A place on the centre line of a wall. */
        ON_WALL,
        /** The same easting or northing as the end of a wall, or the line of a wall that is parallel. */
        IN_LINE,
        /** A direction of 0, 45 or 90 degrees. */
        ANGLE,
        /** A whole number of steps. */
        MODULE
    }

    static SnapMark at(Kind kind, PlanPoint point) {
        return new SnapMark(kind, point, point);
    }
}
