package org.coursewright.takeoff.labour;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import java.util.Objects;

import org.coursewright.measure.UnitCode;
import org.coursewright.takeoff.Fraction;

/**
 * How long a crew takes for one unit of a task under plain conditions, all of its members working together.
 *
 * @param task what is done, such as "lay block"
 * @param unit what is counted
 * @param hoursPerUnit hours of the crew, greater than zero
 * @param source where the figure is from, or "common practice, no source"
 */
public record Productivity(String task, UnitCode unit, Fraction hoursPerUnit, String source) {

    public Productivity {
        Objects.requireNonNull(task, "task");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(source, "source");
        require(hoursPerUnit.signum() > 0, "%s takes %s hours for a %s: give more than zero.", task, hoursPerUnit
                .toDecimal(), unit.title());
    }

    /**
     * @param output of the crew in a day, greater than zero
     * @param hoursPerDay that it works, greater than zero
     * @return that productivity
     */
    public static Productivity perDay(String task, UnitCode unit, Fraction output, Fraction hoursPerDay,
            String source) {
        require(output.signum() > 0, "The output of %s is %s a day: give more than zero.", task, output.toDecimal());
        return new Productivity(task, unit, hoursPerDay.dividedBy(output), source);
    }

    /** @return output in a day of so many hours */
    public Fraction outputIn(Fraction hours) {
        return hours.dividedBy(hoursPerUnit);
    }
}
