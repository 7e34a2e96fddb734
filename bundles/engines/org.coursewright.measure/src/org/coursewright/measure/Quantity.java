package org.coursewright.measure;

import java.math.BigDecimal;
import java.util.Objects;
import java.util.regex.Pattern;

/**
 * An exact number of a unit of measure named by its UN/ECE Recommendation 20 code.
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
                    "\"%s\" is not a UN/ECE Recommendation 20 code, such as MTQ for cubic metre.".formatted(unitCode));
        }
    }

    /**
     * Reads the form written by {@link #toString()}: value and unit code, such as {@code 3.5 MTQ}.
     *
     * @param text the stored form, not null
     * @return that quantity
     * @throws IllegalArgumentException if the text is not of that form
     */
    public static Quantity fromStored(String text) {
        String[] parts = text.strip().split("\\s+");
        if (parts.length != 2 || parts[0].length() > 40) {
            throw new IllegalArgumentException("\"%s\" is not a quantity with its unit code, such as 3.5 MTQ."
                    .formatted(text.length() <= 60 ? text : text.substring(0, 60)));
        }
        return new Quantity(new BigDecimal(parts[0]), parts[1]);
    }

    /** @return the stored form, such as {@code 3.5 MTQ} */
    @Override
    public String toString() {
        return value.toPlainString() + " " + unitCode;
    }
}
