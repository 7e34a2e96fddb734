package org.coursewright.takeoff.cost;

import java.util.Map;
import java.util.Optional;
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

    private enum Dimension {
        LENGTH, AREA, VOLUME, MASS, COUNT, TIME
    }

    private record Scale(Dimension dimension, Fraction factor) {
    }

    private static final Map<UnitCode, Scale> SCALES = Stream.of(lengths(), areas(), volumes(), masses(), counts(),
            times()).flatMap(scales -> scales.entrySet().stream()).collect(Collectors.toUnmodifiableMap(
                    Map.Entry::getKey, Map.Entry::getValue));

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

    private static Map<UnitCode, Scale> lengths() {
        return Map.of(UnitCode.METRE, scale(Dimension.LENGTH, "1"),
                UnitCode.LINEAR_METRE, scale(Dimension.LENGTH, "1"),
                UnitCode.CENTIMETRE, scale(Dimension.LENGTH, "0.01"),
                UnitCode.MILLIMETRE, scale(Dimension.LENGTH, "0.001"),
                UnitCode.INCH, scale(Dimension.LENGTH, "0.0254"),
                UnitCode.FOOT, scale(Dimension.LENGTH, "0.3048"),
                UnitCode.LINEAR_FOOT, scale(Dimension.LENGTH, "0.3048"),
                UnitCode.YARD, scale(Dimension.LENGTH, "0.9144"));
    }

    private static Map<UnitCode, Scale> areas() {
        return Map.of(UnitCode.SQUARE_METRE, scale(Dimension.AREA, "1"),
                UnitCode.SQUARE_FOOT, scale(Dimension.AREA, "0.09290304"),
                UnitCode.SQUARE_YARD, scale(Dimension.AREA, "0.83612736"));
    }

    private static Map<UnitCode, Scale> volumes() {
        return Map.of(UnitCode.CUBIC_METRE, scale(Dimension.VOLUME, "1"),
                UnitCode.CUBIC_DECIMETRE, scale(Dimension.VOLUME, "0.001"),
                UnitCode.LITRE, scale(Dimension.VOLUME, "0.001"),
                UnitCode.CUBIC_FOOT, scale(Dimension.VOLUME, "0.028316846592"),
                UnitCode.CUBIC_YARD, scale(Dimension.VOLUME, "0.764554857984"),
                UnitCode.US_GALLON, scale(Dimension.VOLUME, "0.003785411784"));
    }

    private static Map<UnitCode, Scale> masses() {
        return Map.of(UnitCode.KILOGRAM, scale(Dimension.MASS, "1"),
                UnitCode.TONNE, scale(Dimension.MASS, "1000"),
                UnitCode.POUND, scale(Dimension.MASS, "0.45359237"),
                UnitCode.US_TON, scale(Dimension.MASS, "907.18474"));
    }

    private static Map<UnitCode, Scale> counts() {
        return Map.of(UnitCode.PIECE, scale(Dimension.COUNT, "1"),
                UnitCode.EACH, scale(Dimension.COUNT, "1"),
                UnitCode.ONE, scale(Dimension.COUNT, "1"),
                UnitCode.HUNDRED, scale(Dimension.COUNT, "100"),
                UnitCode.THOUSAND, scale(Dimension.COUNT, "1000"));
    }

    private static Map<UnitCode, Scale> times() {
        return Map.of(UnitCode.HOUR, scale(Dimension.TIME, "60"),
                UnitCode.MINUTE, scale(Dimension.TIME, "1"));
    }

    private static Scale scale(Dimension dimension, String factor) {
        return new Scale(dimension, Fraction.of(factor));
    }
}
