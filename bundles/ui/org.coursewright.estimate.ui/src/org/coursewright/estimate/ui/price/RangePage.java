package org.coursewright.estimate.ui.price;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.coursewright.core.cost.PriceOutcome;
import org.coursewright.core.cost.PriceRange;
import org.coursewright.estimate.ui.chart.ChartCanvas;
import org.coursewright.estimate.ui.chart.RangeStrip;
import org.coursewright.estimate.ui.chart.Tornado;
import org.coursewright.estimate.ui.part.Columns;
import org.coursewright.estimate.ui.part.Figures;
import org.coursewright.measure.Money;
import org.coursewright.workbench.accessible.AccessibleName;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** How far the total may be off, and what drives that. */
final class RangePage extends Composite {

    private static final int BARS = 8;

    private final ChartCanvas strip;
    private final ChartCanvas tornado;
    private final Label note;
    private final Combo choice;
    private final TableViewer table;
    private Optional<PriceRange> range = Optional.empty();
    private String currency = "";

    /** @param parent of the page */
    RangePage(Composite parent) {
        super(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(8, 6).spacing(8, 6).applyTo(this);
        note = new Label(this, SWT.WRAP);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(100, 34).applyTo(note);
        strip = new ChartCanvas(this, PriceText.accessibleRange);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).applyTo(strip);
        new Label(this, SWT.NONE).setText(PriceText.drivers);
        choice = new Combo(this, SWT.READ_ONLY);
        choice.setItems(PriceText.swingLines, PriceText.swingSources);
        choice.select(0);
        choice.addListener(SWT.Selection, event -> refresh());
        tornado = new ChartCanvas(this, PriceText.accessibleTornado);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).applyTo(tornado);
        table = table();
    }

    private TableViewer table() {
        TableViewer viewer = new TableViewer(this, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
        viewer.getTable().setHeaderVisible(true);
        viewer.setContentProvider(ArrayContentProvider.getInstance());
        Columns<PriceRange.Swing> columns = new Columns<>(viewer, PriceRange.Swing.class);
        columns.words(PriceText.line, 220, PriceRange.Swing::name);
        columns.numbers(NLS.bind(PriceText.low, ""), 120, swing -> Figures.amount(swing.low()));
        columns.numbers(NLS.bind(PriceText.high, ""), 120, swing -> Figures.amount(swing.high()));
        columns.numbers(PriceText.variance, 90, swing -> Figures.percent(swing.contribution()));
        GridDataFactory.fillDefaults().span(2, 1).grab(true, true).hint(100, 90).applyTo(viewer.getTable());
        AccessibleName.give(viewer.getTable(), PriceText.accessibleSwings);
        return viewer;
    }

    void show(PriceOutcome price) {
        range = price.range();
        currency = price.currency().getCurrencyCode();
        table.getTable().getColumn(1).setText(NLS.bind(PriceText.low, currency));
        table.getTable().getColumn(2).setText(NLS.bind(PriceText.high, currency));
        note.setText(range.map(each -> NLS.bind(PriceText.rangeNote, new Object[]{Figures.number(BigDecimal
                .valueOf(each.draws()), 0), Figures.money(
                        each
                                .mean()),
                Figures.money(each.deviation())})).orElse(PriceText.nothingUncertain));
        strip.show(range.map(this::strip));
        refresh();
    }

    private RangeStrip strip(PriceRange shown) {
        return new RangeStrip(Stream.of(mark("P10", shown.p10()), mark("P50", shown.p50()), mark("P80", shown.p80()),
                mark("P90", shown.p90())).sorted(Comparator.comparing(RangeStrip.Mark::value)).toList(), currency);
    }

    private static RangeStrip.Mark mark(String name, Money money) {
        return new RangeStrip.Mark(money.amount().doubleValue(), NLS.bind(PriceText.mark, name, Figures.wholeMoney(
                money)));
    }

    private void refresh() {
        List<PriceRange.Swing> swings = range.map(each -> choice.getSelectionIndex() == 0
                ? each.lines()
                : each
                        .sources())
                .orElse(List.of());
        table.setInput(swings);
        tornado.show(range.filter(each -> !swings.isEmpty()).map(each -> new Tornado(swings.stream().limit(BARS).map(
                RangePage::bar).toList(), each.mean().amount().doubleValue(), currency)));
    }

    private static Tornado.Bar bar(PriceRange.Swing swing) {
        return new Tornado.Bar(swing.name(), swing.low().amount().doubleValue(), swing.high().amount().doubleValue(),
                Figures.number(swing.low().amount(), 0), Figures.number(swing.high().amount(), 0));
    }
}
