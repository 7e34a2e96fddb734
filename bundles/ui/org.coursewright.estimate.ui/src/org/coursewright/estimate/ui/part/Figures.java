package org.coursewright.estimate.ui.part;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;

import org.coursewright.measure.Money;
import org.coursewright.measure.Quantity;
import org.coursewright.measure.UnitCode;

/** How numbers are written in tables: with thousands apart, rounded half up; their units beside them. */
public final class Figures {

    private static final int DECIMALS = 3;

    private Figures() {
    }

    /** @return such as {@code 12,345.67 USD}, to the digits that the currency has */
    public static String money(Money money) {
        return amount(money) + " " + money.currency().getCurrencyCode();
    }

    /** @return the same without the currency, for columns that say it at their head */
    public static String amount(Money money) {
        return number(money.rounded().amount(), Math.max(0, money.currency().getDefaultFractionDigits()));
    }

    /** @return such as {@code 12,346 USD}, for charts */
    public static String wholeMoney(Money money) {
        return number(money.amount(), 0) + " " + money.currency().getCurrencyCode();
    }

    /** @return such as {@code 1,234.500}; pieces have no decimals */
    public static String value(Quantity quantity) {
        boolean count = quantity.unit().filter(unit -> unit == UnitCode.PIECE).isPresent();
        return number(quantity.value(), count ? 0 : DECIMALS);
    }

    /** @return such as {@code m³} */
    public static String unit(Quantity quantity) {
        return quantity.unit().map(UnitCode::symbol).orElse(quantity.unitCode());
    }

    /** @return such as {@code 1,234.500 m³} */
    public static String quantity(Quantity quantity) {
        return value(quantity) + " " + unit(quantity);
    }

    /** @return such as {@code 12.5 %} */
    public static String percent(BigDecimal share) {
        return number(share.movePointRight(2), 1) + " %";
    }

    /**
     * @param value any number
     * @param decimals to be shown, zero or more
     * @return it with thousands apart
     */
    public static String number(BigDecimal value, int decimals) {
        DecimalFormat format = new DecimalFormat("#,##0", DecimalFormatSymbols.getInstance(Locale.ROOT));
        format.setMinimumFractionDigits(decimals);
        format.setMaximumFractionDigits(decimals);
        format.setRoundingMode(RoundingMode.HALF_UP);
        return format.format(value);
    }
}
