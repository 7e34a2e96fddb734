package org.coursewright.estimate.ui.scenario;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;

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
    private int rows;

    ScenarioTable(Composite parent) {
        table = new Table(parent, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
        table.setHeaderVisible(true);
        AccessibleName.give(table, ScenarioText.accessibleTable);
    }

    Table control() {
        return table;
    }

    /**
     * @param scenarios the building as planned first
     * @param currency of all figures, empty before that is known
     */
    void show(List<ScenarioColumn> scenarios, String currency) {
        columns(scenarios, currency);
        // the rows stay, so that the selected one stays selected
        rows = 0;
        ScenarioColumn planned = scenarios.get(0);
        price(ScenarioText.total, scenarios, price -> Figures.amount(price.total().total()));
        row(ScenarioText.difference, scenarios, each -> each.moreThan(planned).map(Figures::amount).orElseGet(
                () -> each.noDifference(planned)));
        row(ScenarioText.differencePercent, scenarios, each -> each.moreThan(planned).map(more -> percent(more, planned
                .price().orElseThrow())).orElseGet(() -> each.noDifference(planned)));
        range(10, scenarios, PriceRange::p10);
        range(50, scenarios, PriceRange::p50);
        range(80, scenarios, PriceRange::p80);
        range(90, scenarios, PriceRange::p90);
        CostPart.ALL.forEach(part -> price(part.label(), scenarios, price -> Figures.amount(part.of(price.total()))));
        // GTK does not always paint cells anew whose text alone has changed
        table.redraw();
    }

    private void columns(List<ScenarioColumn> scenarios, String currency) {
        List<String> titles = new ArrayList<>(List.of(currency));
        scenarios.forEach(each -> titles.add(each.title()));
        while (table.getColumnCount() > titles.size()) {
            table.getColumn(table.getColumnCount() - 1).dispose();
        }
        while (table.getColumnCount() < titles.size()) {
            boolean first = table.getColumnCount() == 0;
            new TableColumn(table, first ? SWT.LEFT : SWT.RIGHT).setWidth(first ? FIRST_COLUMN : COLUMN);
        }
        IntStream.range(0, titles.size()).forEach(i -> table.getColumn(i).setText(titles.get(i)));
    }

    private void range(int percentile, List<ScenarioColumn> scenarios, Function<PriceRange, Money> value) {
        price(NLS.bind(ScenarioText.percentile, percentile), scenarios, price -> price.range().map(value).map(
                Figures::amount).orElse(ScenarioText.none));
    }

    private void price(String title, List<ScenarioColumn> scenarios, Function<PriceOutcome, String> cell) {
        row(title, scenarios, each -> each.price().map(cell).orElseGet(each::noFigure));
    }

    private void row(String title, List<ScenarioColumn> scenarios, Function<ScenarioColumn, String> cell) {
        TableItem item = rows < table.getItemCount() ? table.getItem(rows) : new TableItem(table, SWT.NONE);
        rows++;
        item.setText(0, title);
        IntStream.range(0, scenarios.size()).forEach(i -> item.setText(i + 1, cell.apply(scenarios.get(i))));
    }

    private static String percent(Money more, PriceOutcome planned) {
        BigDecimal total = planned.total().total().amount();
        return total.signum() == 0
                ? ScenarioText.none
                : Figures.percent(more.amount().divide(total, SHARE_DECIMALS, RoundingMode.HALF_UP));
    }
}
