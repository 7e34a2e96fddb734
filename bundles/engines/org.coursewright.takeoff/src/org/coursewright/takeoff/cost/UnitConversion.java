package org.coursewright.takeoff.cost;

import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.coursewright.measure.Quantity;
import org.coursewright.measure.UnitCode;
import org.coursewright.takeoff.Fraction;

/**
 * Converts quantities to the unit of a rate where both measure the same. Factors are exact (international yard and pound
 * agreement of 1959; US gallon of 231 in³). A day is not converted to hours: how long it is depends on the site.
 */
public final class UnitConversion {

    /** What units measure, each with how many of a common unit it is. */
    private enum Dimension {

        LENGTH(Map.of(UnitCode.METRE, "1", UnitCode.LINEAR_METRE, "1", UnitCode.CENTIMETRE, "0.01",
                UnitCode.MILLIMETRE, "0.001", UnitCode.INCH, "0.0254", UnitCode.FOOT, "0.3048", UnitCode.LINEAR_FOOT,
                "0.3048", UnitCode.YARD, "0.9144")),

        AREA(Map.of(UnitCode.SQUARE_METRE, "1", UnitCode.SQUARE_FOOT, "0.09290304", UnitCode.SQUARE_YARD,
                "0.83612736")),

        VOLUME(Map.of(UnitCode.CUBIC_METRE, "1", UnitCode.CUBIC_DECIMETRE, "0.001", UnitCode.LITRE, "0.001",
                UnitCode.CUBIC_FOOT, "0.028316846592", UnitCode.CUBIC_YARD, "0.764554857984", UnitCode.US_GALLON,
                "0.003785411784")),

        MASS(Map.of(UnitCode.KILOGRAM, "1", UnitCode.TONNE, "1000", UnitCode.POUND, "0.45359237", UnitCode.US_TON,
                "907.18474")),

        COUNT(Map.of(UnitCode.PIECE, "1", UnitCode.EACH, "1", UnitCode.ONE, "1", UnitCode.HUNDRED, "100",
                UnitCode.THOUSAND, "1000")),

        TIME(Map.of(UnitCode.HOUR, "60", UnitCode.MINUTE, "1"));

        private final Map<UnitCode, String> factors;

        Dimension(Map<UnitCode, String> factors) {
            this.factors = factors;
        }

        private Stream<Scale> scales() {
            return factors.entrySet().stream().map(each -> new Scale(each.getKey(), this, Fraction.of(each
                    .getValue())));
        }
    }

    private record Scale(UnitCode unit, Dimension dimension, Fraction factor) {
    }

    private static final Map<UnitCode, Scale> SCALES = Stream.of(Dimension.values()).flatMap(Dimension::scales).collect(
            Collectors.toUnmodifiableMap(Scale::unit, Function.identity()));

    private UnitConversion() {
    }

    /**
     * @param quantity in a unit of its own
     * @param to unit that is wanted
     * @return the quantity in that unit, rounded as {@link Fraction#toDecimal()} does; empty if the two do not compare
     */
    public static Optional<Quantity> convert(Quantity quantity, UnitCode to) {
        if (quantity.unitCode().equals(to.code())) {
            return Optional.of(quantity);
        }
        Optional<Scale> from = quantity.unit().map(SCALES::get);
        Optional<Scale> target = Optional.ofNullable(SCALES.get(to));
        if (from.isEmpty() || target.isEmpty() || from.get().dimension() != target.get().dimension()) {
            return Optional.empty();
        }
        Fraction factor = from.get().factor().dividedBy(target.get().factor());
        return Optional.of(Quantity.of(Fraction.of(quantity.value()).times(factor).toDecimal(), to));
    }
}
