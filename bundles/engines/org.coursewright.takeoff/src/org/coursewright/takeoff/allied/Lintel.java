package org.coursewright.takeoff.allied;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import java.util.Objects;

import org.coursewright.measure.Length;
import org.coursewright.measure.UnitCode;
import org.coursewright.takeoff.Figure;
import org.coursewright.takeoff.Formula;
import org.coursewright.takeoff.TraceInput;

/**
 * A lintel over an opening, cut or ordered in steps of length.
 *
 * @param opening mark of the opening
 * @param width of the opening, greater than zero
 * @param bearing least on each side, zero or more
 * @param step its length is a multiple of this, greater than zero
 */
public record Lintel(String opening, Length width, Length bearing, Length step) {

    private static final Formula LENGTH = new Formula("lintel.length", "⌈(width + 2 × bearing) ÷ step⌉ × step",
            AlliedFormulas.GEOMETRY);

    public Lintel {
        Objects.requireNonNull(opening, "opening");
        require(width.signum() > 0 && bearing.signum() >= 0 && step.signum() > 0,
                "The lintel of %s has width %s, bearing %s and step %s: width and step must be above zero, bearing not "
                        + "negative.",
                opening, width, bearing, step);
    }

    /** @return its length */
    public Length length() {
        return step.times(AlliedFormulas.cover(width.plus(bearing.times(2)), step));
    }

    /** @return its length (m) with how it came about */
    public Figure figure() {
        return AlliedFormulas.figure(opening, LENGTH, AlliedFormulas.metres(length()), UnitCode.METRE, TraceInput.of(
                "width", width), TraceInput.of("bearing", bearing), TraceInput.of("step", step));
    }
}
