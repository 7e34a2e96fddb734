package org.coursewright.takeoff.allied;

import java.util.List;

import org.coursewright.measure.Length;
import org.coursewright.measure.Quantity;
import org.coursewright.measure.UnitCode;
import org.coursewright.takeoff.Figure;
import org.coursewright.takeoff.Formula;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.Trace;
import org.coursewright.takeoff.TraceInput;

/** What the records of this package share. */
final class AlliedFormulas {

    static final String GEOMETRY = "geometry";
    static final String PRACTICE = "common practice, no source";

    private static final long METRE = 1000 * Length.UNITS_PER_MILLIMETRE;

    private AlliedFormulas() {
    }

    /** @return metres */
    static Fraction metres(Length length) {
        return Fraction.of(length.units(), METRE);
    }

    /** @return square metres */
    static Fraction area(Length first, Length second) {
        return metres(first).times(metres(second));
    }

    /** @return the count of a length that covers another, rounded up; zero if there is nothing to cover */
    static long cover(Length total, Length each) {
        return total.signum() <= 0 ? 0 : Fraction.of(total.units(), each.units()).ceiling();
    }

    static Figure figure(String element, Formula formula, Fraction value, UnitCode unit, TraceInput... inputs) {
        return new Figure(formula.id(), Quantity.of(value.toDecimal(), unit), Trace.of(formula, inputs).from(List.of(
                element)));
    }

    static TraceInput squareMetres(String symbol, Fraction area) {
        return new TraceInput(symbol, Quantity.of(area.toDecimal(), UnitCode.SQUARE_METRE));
    }
}
