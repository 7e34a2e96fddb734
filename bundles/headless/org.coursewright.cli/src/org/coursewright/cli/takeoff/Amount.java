package org.coursewright.cli.takeoff;

import java.math.RoundingMode;

import org.coursewright.measure.Quantity;
import org.coursewright.measure.UnitCode;

/** How quantities are written for people. */
final class Amount {

    private static final int DECIMALS = 3;

    private Amount() {
    }

    /** @return such as {@code 1.234 m³}, rounded half up to three decimals; counts have none */
    static String rounded(Quantity quantity) {
        boolean count = quantity.unit().filter(unit -> unit == UnitCode.PIECE).isPresent();
        return quantity.value().setScale(count ? 0 : DECIMALS, RoundingMode.HALF_UP).toPlainString() + unit(quantity);
    }

    /** @return as many decimals as there are */
    static String exact(Quantity quantity) {
        return quantity.value().stripTrailingZeros().toPlainString() + unit(quantity);
    }

    private static String unit(Quantity quantity) {
        return quantity.unit().filter(unit -> unit != UnitCode.ONE).map(unit -> " " + unit.symbol()).orElse("");
    }
}
