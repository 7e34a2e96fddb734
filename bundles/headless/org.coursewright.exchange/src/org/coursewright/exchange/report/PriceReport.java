package org.coursewright.exchange.report;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

import org.coursewright.core.cost.CostSums;
import org.coursewright.core.cost.GroupSum;
import org.coursewright.core.cost.PriceLine;
import org.coursewright.core.cost.PriceOutcome;
import org.coursewright.core.cost.PriceRange;
import org.coursewright.exchange.report.ReportTable.Cell;
import org.coursewright.measure.Money;
import org.coursewright.measure.Quantity;
import org.coursewright.measure.UnitCode;

/** Prices as tables: lines, build-up, elements, trades, range; of several scenarios side by side. */
public final class PriceReport {

    private static final List<String> KINDS = List.of("material", "labour", "plant", "haulage", "tax", "overhead",
            "contingency", "total");
    private static final List<Function<CostSums, Money>> SUMS = List.of(CostSums::material, CostSums::labour,
            CostSums::plant, CostSums::haulage, CostSums::tax, CostSums::overhead, CostSums::contingency,
            CostSums::total);

    private PriceReport() {
    }

    /**
     * @param project its name
     * @param prices one, or several side by side
     * @return the report; its first table has the lines of the first price, or the sums of all
     */
    public static Report of(String project, List<PriceOutcome> prices) {
        List<ReportTable> tables = new ArrayList<>();
        if (prices.size() > 1) {
            tables.add(sums(prices));
        }
        PriceOutcome first = prices.get(0);
        if (prices.size() == 1) {
            tables.add(lines(first));
            tables.add(sums(prices));
        }
        tables.add(groups("By element", prices, PriceOutcome::byElement));
        tables.add(groups("By trade", prices, PriceOutcome::byTrade));
        if (prices.size() == 1) {
            first.range().ifPresent(range -> tables.add(swings(range)));
        }
        List<String> notes = new ArrayList<>(List.of("This is an estimate. It assumes:"));
        notes.addAll(first.assumptions());
        notes.add("Prices are for planning: ask for offers before you commit to any. Local building codes and the "
                + "structural designer have the last word.");
        return new Report("Price of %s in %s".formatted(project, first.currency()), tables, notes);
    }

    private static ReportTable lines(PriceOutcome price) {
        List<List<Cell>> rows = new ArrayList<>();
        for (PriceLine line : price.lines()) {
            List<Cell> row = new ArrayList<>(List.of(Cell.of(line.number()), Cell.of(line.resource().amount().item()),
                    Cell.of(line.resource().work().words()), Cell.of(line.element()), Cell.of(line.trade())));
            if (line.priced().isPresent()) {
                PriceLine.Priced priced = line.priced().get();
                row.addAll(List.of(number(priced.quantity()), Cell.of(unit(priced.quantity())), Cell.of(priced.rate()
                        .amount()), Cell.of(priced.asOf().map(LocalDate::toString).orElse("")),
                        money(priced.cost()
                                .direct()),
                        money(priced.cost().total())));
            } else {
                Quantity quantity = line.resource().amount().quantity();
                row.addAll(
                        List.of(number(quantity), Cell.of(unit(quantity)), Cell.of(line.problem().orElse("no price")),
                                Cell.of(""), Cell.of(""), Cell.of("")));
            }
            rows.add(row);
        }
        return new ReportTable("Lines", List.of("line", "resource", "work", "element", "trade", "quantity", "unit",
                "rate", "as of", "direct", "total"), rows);
    }

    private static ReportTable sums(List<PriceOutcome> prices) {
        List<List<Cell>> rows = new ArrayList<>();
        for (int i = 0; i < KINDS.size(); i++) {
            Function<CostSums, Money> sum = SUMS.get(i);
            rows.add(row(KINDS.get(i), prices, price -> money(sum.apply(price.total()))));
        }
        rows.add(row("P10", prices, price -> range(price, PriceRange::p10)));
        rows.add(row("P50", prices, price -> range(price, PriceRange::p50)));
        rows.add(row("P80", prices, price -> range(price, PriceRange::p80)));
        rows.add(row("P90", prices, price -> range(price, PriceRange::p90)));
        return new ReportTable("Build-up", header("cost", prices), rows);
    }

    private static Cell range(PriceOutcome price, Function<PriceRange, Money> value) {
        return price.range().map(value).map(PriceReport::money).orElse(Cell.of("none"));
    }

    private static ReportTable groups(String name, List<PriceOutcome> prices,
            Function<PriceOutcome, List<GroupSum>> grouping) {
        List<List<Cell>> rows = new ArrayList<>();
        prices.stream().flatMap(price -> grouping.apply(price).stream()).map(GroupSum::code).distinct().sorted()
                .forEach(
                        code -> rows.add(row(title(prices, grouping, code), prices,
                                price -> grouping.apply(price).stream()
                                        .filter(group -> group.code().equals(code)).findFirst()
                                        .map(group -> money(group.cost().total()))
                                        .orElse(Cell.of(BigDecimal.ZERO)))));
        return new ReportTable(name, header(name.toLowerCase(Locale.ROOT), prices), rows);
    }

    private static String title(List<PriceOutcome> prices, Function<PriceOutcome, List<GroupSum>> grouping,
            String code) {
        return prices.stream().flatMap(price -> grouping.apply(price).stream()).filter(group -> group.code().equals(
                code)).findFirst().map(group -> group.title().equals(code) ? code : code + " " + group.title()).orElse(
                        code);
    }

    private static ReportTable swings(PriceRange range) {
        return new ReportTable("What drives the range", List.of("line", "low", "high", "share of variance"), range
                .lines().stream().map(swing -> List.of(Cell.of(swing.name()), money(swing.low()), money(swing.high()),
                        Cell.of(swing.contribution())))
                .toList());
    }

    private static List<String> header(String first, List<PriceOutcome> prices) {
        List<String> header = new ArrayList<>(List.of(first));
        prices.forEach(price -> header.add(price.scenario()));
        return header;
    }

    private static List<Cell> row(String title, List<PriceOutcome> prices, Function<PriceOutcome, Cell> cell) {
        List<Cell> row = new ArrayList<>(List.of(Cell.of(title)));
        prices.forEach(price -> row.add(cell.apply(price)));
        return row;
    }

    private static Cell money(Money money) {
        return Cell.of(money.rounded().amount());
    }

    private static Cell number(Quantity quantity) {
        return TakeoffTables.number(quantity);
    }

    private static String unit(Quantity quantity) {
        return quantity.unit().map(UnitCode::symbol).orElse(quantity.unitCode());
    }
}
