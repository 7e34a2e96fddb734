package org.coursewright.estimate.ui.scenario;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.IntStream;

import org.coursewright.core.cost.PriceComparison;
import org.coursewright.core.cost.PriceOutcome;
import org.coursewright.core.cost.PriceRange;
import org.coursewright.estimate.ui.part.Figures;
import org.coursewright.estimate.ui.price.CostPart;
import org.coursewright.measure.Money;
import org.coursewright.workbench.accessible.AccessibleName;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

/** A column for each scenario: how its price is built up, how far it may be off, how much more it is than planned. */
final class ScenarioTable {

    private static final int FIRST_COLUMN = 150;
    private static final int COLUMN = 116;
    private static final int SHARE_DECIMALS = 6;

    private final Table table;

    ScenarioTable(Composite parent) {
        table = new Table(parent, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
        table.setHeaderVisible(true);
        AccessibleName.give(table, ScenarioText.accessibleTable);
    }

    Table control() {
        return table;
    }

    void show(PriceComparison comparison) {
        List<PriceOutcome> prices = comparison.prices();
        columns(prices);
        table.removeAll();
        row(ScenarioText.total, prices, price -> Figures.amount(price.total().total()));
        List<Money> more = comparison.differences();
        indexed(ScenarioText.difference, prices, (price, i) -> Figures.amount(more.get(i)));
        indexed(ScenarioText.differencePercent, prices, (price, i) -> percent(more.get(i), prices.get(0)));
        row(NLS.bind(ScenarioText.percentile, 10), prices, range(PriceRange::p10));
        row(NLS.bind(ScenarioText.percentile, 50), prices, range(PriceRange::p50));
        row(NLS.bind(ScenarioText.percentile, 80), prices, range(PriceRange::p80));
        row(NLS.bind(ScenarioText.percentile, 90), prices, range(PriceRange::p90));
        CostPart.ALL.forEach(part -> row(part.label(), prices, price -> Figures.amount(part.of(price.total()))));
    }

    private void columns(List<PriceOutcome> prices) {
        List<String> titles = new ArrayList<>(List.of(prices.get(0).currency().getCurrencyCode()));
        prices.forEach(price -> titles.add(title(price)));
        while (table.getColumnCount() > titles.size()) {
            table.getColumn(table.getColumnCount() - 1).dispose();
        }
        while (table.getColumnCount() < titles.size()) {
            boolean first = table.getColumnCount() == 0;
            new TableColumn(table, first ? SWT.LEFT : SWT.RIGHT).setWidth(first ? FIRST_COLUMN : COLUMN);
        }
        IntStream.range(0, titles.size()).forEach(i -> table.getColumn(i).setText(titles.get(i)));
    }

    /** @return the scenario's mark; it says so if some line has no price */
    static String title(PriceOutcome price) {
        return price.isComplete() ? price.scenario() : NLS.bind(ScenarioText.incomplete, price.scenario());
    }

    private void row(String title, List<PriceOutcome> prices, Function<PriceOutcome, String> cell) {
        indexed(title, prices, (price, i) -> cell.apply(price));
    }

    private void indexed(String title, List<PriceOutcome> prices, BiFunction<PriceOutcome, Integer, String> cell) {
        TableItem item = new TableItem(table, SWT.NONE);
        item.setText(0, title);
        IntStream.range(0, prices.size()).forEach(i -> item.setText(i + 1, cell.apply(prices.get(i), i)));
    }

    private static Function<PriceOutcome, String> range(Function<PriceRange, Money> value) {
        return price -> price.range().map(value).map(Figures::amount).orElse(ScenarioText.none);
    }

    private static String percent(Money more, PriceOutcome planned) {
        BigDecimal total = planned.total().total().amount();
        return total.signum() == 0
                ? ScenarioText.none
                : Figures.percent(more.amount().divide(total, SHARE_DECIMALS, RoundingMode.HALF_UP));
    }
}
