package org.coursewright.measure;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * An exact number of a unit of measure named by its UN/ECE Recommendation 20 code. Any code of the right form is kept,
 * since partners send units that we do not use; {@link #unit()} tells whether we know it. Arithmetic never converts
 * units. Values that differ in trailing zeros are different records.
 *
 * @param value how many, any sign and scale, not null
 * @param unitCode the Recommendation 20 common code, such as MTQ for cubic metre: two or three capital letters or
 *        digits, not null
 */
public record Quantity(BigDecimal value, String unitCode) {

    private static final Pattern CODE = Pattern.compile("[A-Z0-9]{2,3}");

    public Quantity {
        Objects.requireNonNull(value, "value");
        if (!CODE.matcher(unitCode).matches()) {
            throw new IllegalArgumentException(
                    "\"%s\" is not a UN/ECE Recommendation 20 code, such as MTQ for cubic metre."
                            .formatted(StoredDecimal.shown(unitCode)));
        }
    }

    /**
     * So many of a unit that we know.
     *
     * @param value how many, any sign and scale, not null
     * @param unit not null
     * @return that quantity
     */
    public static Quantity of(BigDecimal value, UnitCode unit) {
        return new Quantity(value, unit.code());
    }

    /**
     * Reads the form written by {@link #toString()}: value and unit code, such as {@code 3.5 MTQ}.
     *
     * @param text the stored form, at most 60 characters, not null
     * @return that quantity
     * @throws IllegalArgumentException if the text is not of that form
     */
    public static Quantity fromStored(String text) {
        StoredDecimal stored = StoredDecimal.read(text).orElseThrow(() -> new IllegalArgumentException(
                "\"%s\" is not a quantity with its unit code, such as 3.5 MTQ.".formatted(StoredDecimal.shown(text))));
        return new Quantity(stored.value(), stored.code());
    }

    /** @return the unit if it is one that we use, otherwise empty */
    public Optional<UnitCode> unit() {
        return UnitCode.find(unitCode);
    }

    /**
     * @param other a quantity of the same unit
     * @return the exact sum
     * @throws IllegalArgumentException if the units differ
     */
    public Quantity plus(Quantity other) {
        return new Quantity(value.add(inSameUnit(other)), unitCode);
    }

    /**
     * @param other a quantity of the same unit
     * @return the exact difference
     * @throws IllegalArgumentException if the units differ
     */
    public Quantity minus(Quantity other) {
        return new Quantity(value.subtract(inSameUnit(other)), unitCode);
    }

    /**
     * @param factor how many times, any sign, not null
     * @return the exact product
     */
    public Quantity times(BigDecimal factor) {
        return new Quantity(value.multiply(factor), unitCode);
    }

    private BigDecimal inSameUnit(Quantity other) {
        if (!unitCode.equals(other.unitCode)) {
            throw new IllegalArgumentException(
                    "%s and %s are in different units; convert one of them first.".formatted(this, other));
        }
        return other.value;
    }

    /** @return the stored form, such as {@code 3.5 MTQ} */
    @Override
    public String toString() {
        return value.toPlainString() + " " + unitCode;
    }
}
