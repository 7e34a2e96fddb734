package org.coursewright.core.takeoff;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.coursewright.measure.Quantity;
import org.coursewright.measure.UnitCode;

/**
 * So much of something, and how that came about.
 *
 * @param item what it is, such as {@code B14 stretcher} or {@code mortar}
 * @param quantity how much
 * @param formula stable name of the formula, such as {@code units.ordered}
 * @param expression the formula, in the symbols of the inputs
 * @param source a publication, "geometry", or "common practice, no source"
 * @param inputs what went into the formula, in its order
 * @param elements what it was taken from, such as {@code W1}, or {@code W1/3} for its third course
 */
public record TakeoffLine(String item, Quantity quantity, String formula, String expression, String source,
        List<Input> inputs, List<String> elements) {

    private static final int DECIMALS = 9;
    private static final BigDecimal METRES_PER_FOOT = new BigDecimal("0.3048");

    /**
     * A number that went into a formula.
     *
     * @param symbol what the formula calls it
     * @param value its value
     */
    public record Input(String symbol, Quantity value) {

        public Input {
            Objects.requireNonNull(symbol, "symbol");
            Objects.requireNonNull(value, "value");
        }
    }

    public TakeoffLine {
        Objects.requireNonNull(item, "item");
        Objects.requireNonNull(quantity, "quantity");
        Objects.requireNonNull(formula, "formula");
        Objects.requireNonNull(expression, "expression");
        Objects.requireNonNull(source, "source");
        inputs = List.copyOf(inputs);
        elements = List.copyOf(elements);
    }

    /**
     * @return the quantity in feet, square feet or cubic feet, to nine decimals, if it is in metres of some kind; a foot is
     *         0.3048 m exactly (NIST Special Publication 811, Appendix B)
     */
    public Optional<Quantity> inFeet() {
        return quantity.unit().flatMap(unit -> switch (unit) {
            case METRE -> Optional.of(feet(1, UnitCode.FOOT));
            case SQUARE_METRE -> Optional.of(feet(2, UnitCode.SQUARE_FOOT));
            case CUBIC_METRE -> Optional.of(feet(3, UnitCode.CUBIC_FOOT));
            default -> Optional.empty();
        });
    }

    private Quantity feet(int dimensions, UnitCode unit) {
        return Quantity.of(quantity.value().divide(METRES_PER_FOOT.pow(dimensions), DECIMALS, RoundingMode.HALF_EVEN),
                unit);
    }
}
