package org.coursewright.layout.ui.plan.shape;

import java.util.Objects;

import org.coursewright.measure.Length;

/**
 * A point in plan.
 *
 * @param x easting
 * @param y northing
 */
public record PlanPoint(Length x, Length y) {

    /** Where both coordinates are zero. */
    public static final PlanPoint ORIGIN = new PlanPoint(Length.ZERO, Length.ZERO);

    public PlanPoint {
        Objects.requireNonNull(x, "x");
        Objects.requireNonNull(y, "y");
    }

    /**
     * @param by how far and where to
     * @return the point there
     */
    public PlanPoint plus(PlanVector by) {
        return new PlanPoint(x.plus(by.east()), y.plus(by.north()));
    }

    /**
     * @param other point
     * @return the way there
     */
    public PlanVector to(PlanPoint other) {
        return new PlanVector(other.x.minus(x), other.y.minus(y));
    }

    /**
     * @param other point
     * @return how far it is, to the nearest 1/320 mm
     */
    public Length distance(PlanPoint other) {
        return to(other).length();
    }

    /**
     * @param other point
     * @return the point halfway, to the nearest 1/320 mm
     */
    public PlanPoint halfway(PlanPoint other) {
        PlanVector way = to(other);
        return plus(new PlanVector(Length.ofUnits(Math.floorDiv(way.east().units(), 2)),
                Length.ofUnits(Math.floorDiv(way.north().units(), 2))));
    }
}
