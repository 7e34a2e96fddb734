package org.coursewright.layout.ui.plan.shape;

import org.coursewright.measure.Length;

/**
 * A direction in plan. Along the axes it is exact; what is measured along a slanted one is rounded to the nearest 1/320
 * mm, as coordinates are.
 *
 * @param east from -1 to 1
 * @param north from -1 to 1; together with {@code east} of length 1
 */
public record Heading(double east, double north) {

    /** Eastward, along the axis of eastings. */
    public static final Heading EAST = new Heading(1, 0);

    /** Northward, along the axis of northings. */
    public static final Heading NORTH = new Heading(0, 1);

    /** In line or square count as such to 5 mm in a metre, as where walls meet (common practice, no source). */
    private static final double STRAIGHTNESS = 0.005;

    /**
     * @param way not none
     * @return where it leads
     */
    public static Heading of(PlanVector way) {
        double length = Math.hypot(way.east().units(), way.north().units());
        if (length == 0) {
            throw new IllegalArgumentException("A way without a length leads nowhere.");
        }
        return new Heading(way.east().units() / length, way.north().units() / length);
    }

    /**
     * @param degrees counterclockwise from east
     * @return that direction
     */
    public static Heading ofDegrees(double degrees) {
        double radians = Math.toRadians(degrees);
        return new Heading(tidy(Math.cos(radians)), tidy(Math.sin(radians)));
    }

    /** The sine of 180 degrees is not quite zero in floating point. */
    private static double tidy(double value) {
        return Math.abs(value - Math.rint(value)) < 1e-12 ? Math.rint(value) : value;
    }

    /** @return degrees counterclockwise from east, from 0 up to 360 */
    public double degrees() {
        double degrees = Math.toDegrees(Math.atan2(north, east));
        return degrees < 0 ? degrees + 360 : degrees;
    }

    /** @return the opposite direction */
    public Heading reversed() {
        return new Heading(0 - east, 0 - north);
    }

    /** @return the direction on the left hand */
    public Heading left() {
        return new Heading(0 - north, east);
    }

    /**
     * @param distance how far, negative for backwards
     * @return the way there
     */
    public PlanVector ahead(Length distance) {
        return new PlanVector(Length.ofUnits(Math.round(east * distance.units())),
                Length.ofUnits(Math.round(north * distance.units())));
    }

    /**
     * @param way any
     * @return how far ahead it leads
     */
    public Length along(PlanVector way) {
        return Length.ofUnits(Math.round(east * way.east().units() + north * way.north().units()));
    }

    /**
     * @param way any
     * @return how far to the left it leads
     */
    public Length across(PlanVector way) {
        return left().along(way);
    }

    /**
     * @param other direction
     * @return the sine of the angle to it, positive if it is on the left hand
     */
    public double cross(Heading other) {
        return east * other.north - north * other.east;
    }

    /**
     * @param other direction
     * @return the cosine of the angle to it
     */
    public double dot(Heading other) {
        return east * other.east + north * other.north;
    }

    /**
     * @param other direction
     * @return whether the two are in line, the same way or the opposite way
     */
    public boolean isParallel(Heading other) {
        return Math.abs(cross(other)) <= STRAIGHTNESS;
    }
}
