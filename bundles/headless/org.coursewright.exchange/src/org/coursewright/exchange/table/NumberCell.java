package org.coursewright.exchange.table;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.coursewright.exchange.remark.Shown;
import org.coursewright.measure.Quantity;
import org.coursewright.measure.UnitCode;

/** Reads cells that hold numbers, quantities and dates. */
public final class NumberCell {

    private static final Pattern NUMBER = Pattern.compile("(-?\\d{1,12}(?:\\.\\d{1,12})?)\\s*(%?)");
    private static final Pattern QUANTITY = Pattern.compile("(\\d{1,12}(?:\\.\\d{1,12})?)\\s+([A-Z0-9]{2,3})");

    private NumberCell() {
    }

    /** @return a share from 0 to 1, written such as {@code 0.05} or {@code 5 %}; empty if the cell is */
    public static Optional<BigDecimal> share(Cells cells, String column) {
        return number(cells, column, "a share from 0 to 1, such as 0.05 or 5 %", BigDecimal.ZERO, BigDecimal.ONE);
    }

    /** @return a number above 0; empty if the cell is */
    public static Optional<BigDecimal> positive(Cells cells, String column) {
        return number(cells, column, "a number above 0", new BigDecimal("1E-12"), new BigDecimal("1E12"));
    }

    /** @return a number of 0 or more; empty if the cell is */
    public static Optional<BigDecimal> notNegative(Cells cells, String column) {
        return number(cells, column, "a number of 0 or more", BigDecimal.ZERO, new BigDecimal("1E12"));
    }

    /** @return a whole number within the bounds; empty if the cell is */
    public static Optional<Integer> whole(Cells cells, String column, int least, int most) {
        String text = cells.text(column);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Optional<Integer> number = Optional.of(text).filter(each -> each.matches("\\d{1,9}")).map(Integer::valueOf)
                .filter(each -> each >= least && each <= most);
        if (number.isEmpty()) {
            cells.wrong(column, "%s cannot be used: enter a whole number from %d to %d.".formatted(Shown.quoted(text),
                    least, most));
        }
        return number;
    }

    private static Optional<BigDecimal> number(Cells cells, String column, String wanted, BigDecimal least,
            BigDecimal most) {
        String text = cells.text(column);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Optional<BigDecimal> number = parsed(text).filter(each -> each.compareTo(least) >= 0 && each.compareTo(
                most) <= 0);
        if (number.isEmpty()) {
            cells.wrong(column, "%s cannot be used: enter %s.".formatted(Shown.quoted(text), wanted));
        }
        return number;
    }

    /** @return a number such as {@code 0.05}, {@code -3} or {@code 5 %}; empty if it is none */
    public static Optional<BigDecimal> parsed(String text) {
        Matcher number = NUMBER.matcher(text);
        return number.matches()
                ? Optional.of(new BigDecimal(number.group(1)).movePointLeft(number.group(2).isEmpty() ? 0 : 2))
                : Optional.empty();
    }

    /** @return a quantity above 0 such as {@code 94 LBR}; empty if the cell is */
    public static Optional<Quantity> quantity(Cells cells, String column) {
        String text = cells.text(column);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Matcher quantity = QUANTITY.matcher(text);
        Optional<Quantity> read = quantity.matches() && UnitCode.find(quantity.group(2)).isPresent()
                ? Optional.of(new Quantity(new BigDecimal(quantity.group(1)), quantity.group(2))).filter(
                        each -> each.value().signum() > 0)
                : Optional.empty();
        if (read.isEmpty()) {
            cells.wrong(column, "%s is no quantity: enter a number above 0 and its UN/ECE code, such as 94 LBR."
                    .formatted(Shown.quoted(text)));
        }
        return read;
    }

    /** @return a date such as {@code 2026-03-31}; empty if the cell is */
    public static Optional<LocalDate> date(Cells cells, String column) {
        String text = cells.text(column);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeParseException e) {
            cells.wrong(column, "%s is no date from its character %d on: enter one such as 2026-03-31.".formatted(Shown
                    .quoted(text), e.getErrorIndex() + 1));
            return Optional.empty();
        }
    }
}
