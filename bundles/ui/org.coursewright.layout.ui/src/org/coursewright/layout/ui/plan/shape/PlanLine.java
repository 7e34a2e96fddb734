package org.coursewright.layout.ui.plan.shape;

import java.util.Optional;

import org.coursewright.measure.Length;

/**
 * An endless line in plan.
 *
 * @param through a point of it
 * @param heading where it leads
 */
public record PlanLine(PlanPoint through, Heading heading) {

    /**
     * @param distance to the left, negative to the right
     * @return the parallel line there
     */
    public PlanLine shifted(Length distance) {
        return new PlanLine(through.plus(heading.left().ahead(distance)), heading);
    }

    /**
     * @param other line
     * @return where the two cross, empty if they are parallel
     */
    public Optional<PlanPoint> crossing(PlanLine other) {
        if (heading.isParallel(other.heading)) {
            return Optional.empty();
        }
        PlanVector between = through.to(other.through);
        double along = (between.east().units() * other.heading.north() - between.north().units()
                * other.heading.east()) / heading.cross(other.heading);
        return Optional.of(through.plus(heading.ahead(Length.ofUnits(Math.round(along)))));
    }

    /**
     * @param point any
     * @return the nearest point of the line
     */
    public PlanPoint foot(PlanPoint point) {
        return through.plus(heading.ahead(heading.along(through.to(point))));
    }

    /**
     * @param point any
     * @return how far it is from the line
     */
    public Length distance(PlanPoint point) {
        return heading.across(through.to(point)).abs();
    }
}
