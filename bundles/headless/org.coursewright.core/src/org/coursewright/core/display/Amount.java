package org.coursewright.core.display;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Pattern;

import org.coursewright.measure.DisplayUnit;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.coursewright.measure.Quantity;
import org.coursewright.measure.UnitCode;

/**
 * How quantities are written for people.
 *
 * @param lengths how the project writes lengths
 */
public record Amount(LengthFormat lengths) {

    private static final int DECIMALS = 3;
    private static final Pattern MILLIMETRES = Pattern.compile("(\\d+(?:\\.\\d+)?) mm\\b");

    /** @return such as {@code 1.234 m³}, rounded half up to three decimals; counts have none */
    public String rounded(Quantity quantity) {
        boolean count = quantity.unit().filter(unit -> unit == UnitCode.PIECE).isPresent();
        return quantity.value().setScale(count ? 0 : DECIMALS, RoundingMode.HALF_UP).toPlainString() + unit(quantity);
    }

    /** @return as many decimals as there are; a length in millimetres as the project writes lengths */
    public String exact(Quantity quantity) {
        boolean length = quantity.unit().filter(unit -> unit == UnitCode.MILLIMETRE).isPresent();
        return length
                ? written(quantity.value())
                : quantity.value().stripTrailingZeros().toPlainString() + unit(quantity);
    }

    /** @return a text with its millimetres as the project writes lengths */
    public String inProject(String text) {
        return lengths.unit() == DisplayUnit.MILLIMETRE
                ? text
                : MILLIMETRES.matcher(text).replaceAll(match -> written(new BigDecimal(match.group(1))));
    }

    private String written(BigDecimal millimetres) {
        BigDecimal units = millimetres.multiply(BigDecimal.valueOf(Length.UNITS_PER_MILLIMETRE));
        boolean whole = units.stripTrailingZeros().scale() <= 0 && units.precision() < Long.toString(Long.MAX_VALUE)
                .length();
        return whole
                ? lengths.formatExact(Length.ofUnits(units.longValueExact()))
                : millimetres.toPlainString() + " mm";
    }

    private static String unit(Quantity quantity) {
        return quantity.unit().filter(unit -> unit != UnitCode.ONE).map(unit -> " " + unit.symbol()).orElse("");
    }
}
