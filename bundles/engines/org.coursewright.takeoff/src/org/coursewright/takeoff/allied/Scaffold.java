package org.coursewright.takeoff.allied;

import static org.coursewright.takeoff.InvalidTakeoffException.require;

import java.util.List;
import java.util.Objects;

import org.coursewright.measure.Length;
import org.coursewright.measure.UnitCode;
import org.coursewright.takeoff.Figure;
import org.coursewright.takeoff.Formula;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.TraceInput;

/**
 * Scaffold along a wall. A quantity only: how scaffold is founded, tied, decked and inspected is for the local rules and a
 * competent person.
 *
 * @param element the wall
 * @param length greater than zero
 * @param height of the wall, greater than zero
 * @param reach height that is laid from the ground or a deck, greater than zero; about 1.5 m (common practice, no source)
 * @param lift height from deck to deck, greater than zero
 */
public record Scaffold(String element, Length length, Length height, Length reach, Length lift) {

    private static final Formula LIFTS = new Formula("scaffold.lifts", "⌈(height − reach) ÷ lift⌉",
            AlliedFormulas.PRACTICE);
    private static final Formula FACE = new Formula("scaffold.face", "length × lifts × lift", AlliedFormulas.PRACTICE);

    public Scaffold {
        Objects.requireNonNull(element, "element");
        require(length.signum() > 0 && height.signum() > 0 && reach.signum() > 0 && lift.signum() > 0,
                "Scaffold along %s of %s × %s with reach %s and lift %s: all must be above zero.", element, length,
                height, reach, lift);
    }

    /** @return decks above the ground; none if the wall is within reach */
    public long lifts() {
        return AlliedFormulas.cover(height.minus(reach), lift);
    }

    /** @return number of lifts and face of scaffold (m²) */
    public List<Figure> figures() {
        return List.of(AlliedFormulas.figure(element, LIFTS, Fraction.of(lifts()), UnitCode.ONE, TraceInput.of("height",
                height), TraceInput.of("reach", reach), TraceInput.of("lift", lift)), AlliedFormulas.figure(element,
                        FACE, AlliedFormulas.area(length, lift).times(lifts()), UnitCode.SQUARE_METRE, TraceInput.of(
                                "length", length),
                        TraceInput.of("lifts", lifts()), TraceInput.of("lift", lift)));
    }
}
