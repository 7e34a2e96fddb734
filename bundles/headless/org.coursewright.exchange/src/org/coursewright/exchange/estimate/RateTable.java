package org.coursewright.exchange.estimate;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.Optional;
import java.util.stream.Stream;

import org.coursewright.exchange.remark.Shown;
import org.coursewright.exchange.table.Cells;
import org.coursewright.exchange.table.Column;
import org.coursewright.exchange.table.LengthRange;
import org.coursewright.exchange.table.NumberCell;
import org.coursewright.exchange.table.Schedule;
import org.coursewright.measure.Money;
import org.coursewright.model.catalogue.UnitType;
import org.coursewright.model.estimate.EstimateFactory;
import org.coursewright.model.estimate.Rate;
import org.coursewright.model.estimate.RateKind;

/** A price list. */
final class RateTable extends Schedule<Made<Rate>> {

    private final Book book;
    private final Optional<Currency> currency;

    /** @param currency that all rates must be in, if the project has one */
    RateTable(Book book, Optional<Currency> currency) {
        super(Stream.concat(Stream.of(Column.mandatory("resource"), Column.mandatory("kind"), Column.mandatory("price"),
                Column.mandatory("currency"), Column.mandatory("unit"), Column.optional("as_of"), Column.optional(
                        "trade"),
                Column.optional("element"), Column.optional("source")),
                RangeCells.COLUMNS.stream())
                .toList());
        this.book = book;
        this.currency = currency;
    }

    @Override
    protected String markColumn() {
        return "resource";
    }

    @Override
    protected Made<Rate> row(Cells cells) {
        Rate rate = EstimateFactory.eINSTANCE.createRate();
        rate.setMark(resource(cells));
        cells.word("kind", RateKind.values(), RateKind::getLiteral).ifPresentOrElse(rate::setKind, () -> {
            if (cells.text("kind").isEmpty()) {
                cells.wrong("kind", "The cell is empty. Enter material, labour, plant or haulage.");
            }
        });
        price(cells).ifPresent(rate::setPrice);
        rate.setUnitCode(MaterialTable.unit(cells, "unit"));
        NumberCell.date(cells, "as_of").ifPresent(rate::setAsOf);
        text(cells, "trade").ifPresent(rate::setTrade);
        text(cells, "element").ifPresent(rate::setElement);
        text(cells, "source").ifPresent(rate::setSource);
        RangeCells.read(cells, rate, book);
        return new Made<>(cells.line(), rate.getMark(), rate);
    }

    /** A special is named by its unit type and its length, which is stored in millimetres whatever it is typed in. */
    private String resource(Cells cells) {
        String name = cells.mark("resource");
        for (int blank = name.indexOf(' '); blank >= 0; blank = name.indexOf(' ', blank + 1)) {
            String rest = name.substring(blank + 1).strip();
            Optional<UnitType> type = book.units().known(name.substring(0, blank));
            if (type.isPresent() && !rest.isEmpty() && Character.isDigit(rest.charAt(0))) {
                return type.get().getMark() + " " + cells.parsed("resource", rest, LengthRange.PIECE);
            }
        }
        return name;
    }

    private static Optional<String> text(Cells cells, String column) {
        return cells.text(column).isEmpty() ? Optional.empty() : Optional.of(cells.mark(column));
    }

    private Optional<Money> price(Cells cells) {
        String text = cells.text("price");
        Optional<BigDecimal> amount = NumberCell.parsed(text).filter(each -> !text.contains("%"));
        if (amount.isEmpty()) {
            cells.wrong("price", text.isEmpty()
                    ? "The cell is empty. Enter a price such as 12.50."
                    : "%s is no price: enter a number such as 12.50.".formatted(Shown.quoted(text)));
        } else if (amount.get().signum() < 0) {
            cells.wrong("price", "%s is negative: enter 0 or more.".formatted(text));
        }
        return currency(cells).flatMap(of -> amount.map(each -> new Money(each, of)));
    }

    private Optional<Currency> currency(Cells cells) {
        String code = cells.text("currency");
        Optional<Currency> found = Currency.getAvailableCurrencies().stream()
                .filter(each -> each.getCurrencyCode().equals(code)).findFirst();
        if (found.isEmpty()) {
            cells.wrong("currency", "%s is no ISO 4217 code: enter one such as USD.".formatted(Shown.quoted(code)));
        } else if (currency.filter(each -> !each.equals(found.get())).isPresent()) {
            cells.wrong("currency", "The project is in %s: convert the price of %s.".formatted(currency.get(), code));
        }
        return found;
    }
}
