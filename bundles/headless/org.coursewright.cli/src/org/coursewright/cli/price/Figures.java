package org.coursewright.cli.price;

import java.math.BigDecimal;
import java.math.RoundingMode;

import org.coursewright.measure.Money;
import org.coursewright.measure.Quantity;
import org.coursewright.measure.UnitCode;

/** How money and quantities are written for people. */
final class Figures {

    private static final int DECIMALS = 3;
    private static final int PERCENT = 100;

    private Figures() {
    }

    /** @return rounded to the decimals of its currency, without its code */
    static String money(Money money) {
        return money.rounded().amount().toPlainString();
    }

    /** @return to three decimals, whole numbers without, and the symbol of the unit */
    static String quantity(Quantity quantity) {
        BigDecimal stripped = quantity.value().stripTrailingZeros();
        BigDecimal shown = stripped.scale() <= 0
                ? stripped.setScale(0)
                : stripped.setScale(DECIMALS,
                        RoundingMode.HALF_UP);
        return shown.toPlainString() + " " + unit(quantity);
    }

    static String unit(Quantity quantity) {
        return quantity.unit().map(UnitCode::symbol).orElse(quantity.unitCode());
    }

    /** @return such as {@code 12 %} */
    static String percent(BigDecimal share) {
        return share.multiply(BigDecimal.valueOf(PERCENT)).setScale(0, RoundingMode.HALF_UP).toPlainString() + " %";
    }
}
