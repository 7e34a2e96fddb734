package org.coursewright.takeoff.labour;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import java.util.Objects;

import org.coursewright.measure.Quantity;
import org.coursewright.measure.UnitCode;
import org.coursewright.takeoff.Figure;
import org.coursewright.takeoff.Formula;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.Trace;
import org.coursewright.takeoff.TraceInput;

/**
 * Work of a machine: pressing, mixing, sawing.
 *
 * @param plant the machine
 * @param unit what is counted
 * @param quantity how many, zero or more
 * @param outputPerHour while it runs, greater than zero
 * @param lost share of its hours lost to tuning, breakdown and rain, from 0 to less than 1; 0.15 to 0.25 for block presses
 *        (common practice, no source)
 */
public record PlantTask(String plant, UnitCode unit, Fraction quantity, Fraction outputPerHour, Fraction lost) {

    private static final Formula HOURS = new Formula("plant.hours", "quantity ÷ (outputPerHour × (1 − lost))",
            "common practice, no source");

    public PlantTask {
        Objects.requireNonNull(plant, "plant");
        Objects.requireNonNull(unit, "unit");
        require(quantity.signum() >= 0, "%s is to do %s: the quantity must not be negative.", plant, quantity
                .toDecimal());
        require(outputPerHour.signum() > 0, "%s does %s an hour: give more than zero.", plant, outputPerHour
                .toDecimal());
        require(lost.signum() >= 0 && lost.compareTo(Fraction.ONE) < 0,
                "%s loses a share of %s of its hours: give one from 0 to less than 1.", plant, lost.toDecimal());
    }

    /** @return hours, lost ones included */
    public Fraction hours() {
        return quantity.dividedBy(outputPerHour.times(Fraction.ONE.minus(lost)));
    }

    /** @return the hours with how they came about */
    public Figure figure() {
        return new Figure(plant, Quantity.of(hours().toDecimal(), UnitCode.HOUR), Trace.of(HOURS, new TraceInput(
                "quantity", Quantity.of(quantity.toDecimal(), unit)), TraceInput.of("outputPerHour", outputPerHour),
                TraceInput.of("lost", lost)));
    }
}
