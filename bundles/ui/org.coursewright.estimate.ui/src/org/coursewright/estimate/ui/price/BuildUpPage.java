package org.coursewright.estimate.ui.price;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.coursewright.core.cost.CostSums;
import org.coursewright.core.cost.GroupSum;
import org.coursewright.core.cost.PriceOutcome;
import org.coursewright.estimate.ui.chart.ChartCanvas;
import org.coursewright.estimate.ui.chart.StackedBars;
import org.coursewright.estimate.ui.part.Columns;
import org.coursewright.estimate.ui.part.Figures;
import org.coursewright.workbench.accessible.AccessibleName;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;

/** What the total is made of: by kind, with the shares that are added; by element; by trade. */
final class BuildUpPage extends Composite {

    private static final int SHARE_DECIMALS = 6;

    private final TableViewer table;
    private final ShareFields shares;
    private final Combo choice;
    private final ChartCanvas chart;
    private Optional<PriceOutcome> price = Optional.empty();

    /**
     * @param parent of the page
     * @param shares that the project's estimate adds
     */
    BuildUpPage(Composite parent, Shares shares) {
        super(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(8, 6).spacing(12, 8).applyTo(this);
        table = table(this);
        this.shares = new ShareFields(this, shares);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(this.shares);
        choice = new Combo(this, SWT.READ_ONLY);
        choice.setItems(PriceText.byElement, PriceText.byTrade);
        choice.select(0);
        AccessibleName.give(choice, PriceText.accessibleGroups);
        choice.addListener(SWT.Selection, event -> refresh());
        GridDataFactory.swtDefaults().span(2, 1).applyTo(choice);
        chart = new ChartCanvas(this, PriceText.accessibleGroups);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).applyTo(chart);
    }

    private static TableViewer table(Composite parent) {
        TableViewer viewer = new TableViewer(parent, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
        viewer.getTable().setHeaderVisible(true);
        viewer.setContentProvider(ArrayContentProvider.getInstance());
        Columns<Row> columns = new Columns<>(viewer, Row.class);
        columns.words(PriceText.cost, 90, Row::label);
        columns.numbers("", 110, Row::amount);
        columns.numbers(PriceText.ofTotal, 70, Row::share);
        AccessibleName.give(viewer.getTable(), PriceText.accessibleBuildUp);
        return viewer;
    }

    /** A row of the table. */
    private record Row(String label, String amount, String share) {
    }

    void show(PriceOutcome shown) {
        price = Optional.of(shown);
        refresh();
        shares.refresh();
    }

    private void refresh() {
        price.ifPresent(this::refresh);
    }

    private void refresh(PriceOutcome shown) {
        table.getTable().getColumn(1).setText(shown.currency().getCurrencyCode());
        List<Row> rows = new ArrayList<>(CostPart.ALL.stream().map(part -> row(part.label(), part.of(shown.total())
                .amount(), shown.total(), Figures.amount(part.of(shown.total())))).toList());
        rows.add(
                row(NLS.bind(PriceText.total, shown.currency().getCurrencyCode()), shown.total().total().amount(), shown
                        .total(), Figures.amount(shown.total().total())));
        table.setInput(rows);
        chart.show(Optional.of(bars(shown, choice.getSelectionIndex() == 0 ? shown.byElement() : shown.byTrade())));
    }

    private static Row row(String label, BigDecimal part, CostSums all, String amount) {
        BigDecimal total = all.total().amount();
        return new Row(label, amount, total.signum() == 0
                ? ""
                : Figures.percent(part.divide(total, SHARE_DECIMALS,
                        RoundingMode.HALF_UP)));
    }

    private static StackedBars bars(PriceOutcome price, List<GroupSum> groups) {
        return new StackedBars(CostPart.ALL.stream().map(CostPart::label).toList(), groups.stream().map(
                group -> new StackedBars.Bar(title(group),
                        CostPart.ALL.stream().map(part -> part.of(group.cost()).amount()
                                .doubleValue()).toList(),
                        Figures.wholeMoney(group.cost().total()), Optional.empty()))
                .toList(),
                price.currency().getCurrencyCode());
    }

    private static String title(GroupSum group) {
        return group.title().equals(group.code())
                ? group.code()
                : NLS.bind(PriceText.mark, group.code(), group.title());
    }
}
