package org.coursewright.estimate.ui.price;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;

import org.coursewright.core.cost.PriceLine;
import org.coursewright.core.cost.PriceOutcome;
import org.coursewright.estimate.ui.part.Columns;
import org.coursewright.estimate.ui.part.Figures;
import org.coursewright.estimate.ui.part.TypedCell;
import org.coursewright.measure.Quantity;
import org.coursewright.measure.UnitCode;
import org.coursewright.model.estimate.Rate;
import org.coursewright.workbench.accessible.AccessibleName;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** Every resource with its price; rates are typed over in place. */
final class LineTable extends Composite {

    private final Text search;
    private final TableViewer viewer;
    private final Label note;
    private final Rates rates;
    private List<PriceLine> lines = List.of();

    /**
     * @param parent of the table
     * @param rates of the project
     * @param selected told the rate of the line that is selected
     */
    LineTable(Composite parent, Rates rates, Consumer<Optional<Rate>> selected) {
        super(parent, SWT.NONE);
        this.rates = rates;
        GridLayoutFactory.fillDefaults().numColumns(2).margins(8, 6).spacing(6, 4).applyTo(this);
        new Label(this, SWT.NONE).setText(PriceText.search);
        search = new Text(this, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
        search.setMessage(PriceText.searchHint);
        search.addListener(SWT.Modify, event -> refresh());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(search);
        viewer = new TableViewer(this, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
        viewer.getTable().setHeaderVisible(true);
        viewer.setContentProvider(ArrayContentProvider.getInstance());
        GridDataFactory.fillDefaults().span(2, 1).grab(true, true).hint(100, 100).applyTo(viewer.getTable());
        AccessibleName.give(viewer.getTable(), PriceText.accessibleLines);
        note = new Label(this, SWT.WRAP);
        GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(1, 36).applyTo(note);
        addColumns();
        viewer.addSelectionChangedListener(event -> {
            selected.accept(selected().flatMap(rates::of));
            explain(Optional.empty());
        });
    }

    private void addColumns() {
        Columns<PriceLine> columns = new Columns<>(viewer, PriceLine.class);
        columns.words(PriceText.resource, 92, line -> line.resource().resource());
        columns.words(PriceText.work, 74, line -> line.resource().work().words());
        columns.words(PriceText.element, 68, PriceLine::element);
        columns.words(PriceText.trade, 96, PriceLine::trade);
        columns.numbers(PriceText.quantity, 82, line -> Figures.value(quantity(line)));
        columns.words(PriceText.unit, 40, line -> Figures.unit(quantity(line)));
        columns.numbers(PriceText.rate, 84, line -> rates.of(line).map(Rate::getPrice).map(Object::toString).orElse(
                PriceText.unpriced)).setEditingSupport(new TypedCell<>(viewer, PriceLine.class, rates::price,
                        this::explain));
        columns.numbers(NLS.bind(PriceText.direct, ""), 96, sum(priced -> Figures.amount(priced.cost().direct())));
        columns.numbers(NLS.bind(PriceText.total, ""), 88, sum(priced -> Figures.amount(priced.cost().total())));
    }

    private static Quantity quantity(PriceLine line) {
        return line.priced().map(PriceLine.Priced::quantity).orElse(line.resource().amount().quantity());
    }

    private static Function<PriceLine, String> sum(Function<PriceLine.Priced, String> of) {
        return line -> line.priced().map(of).orElse(PriceText.unpriced);
    }

    /** Shows another price. */
    void show(PriceOutcome price) {
        lines = price.lines();
        String currency = price.currency().getCurrencyCode();
        int columns = viewer.getTable().getColumnCount();
        viewer.getTable().getColumn(columns - 2).setText(NLS.bind(PriceText.direct, currency));
        viewer.getTable().getColumn(columns - 1).setText(NLS.bind(PriceText.total, currency));
        refresh();
    }

    private void refresh() {
        int selected = selected().map(PriceLine::number).orElse(0);
        String[] words = search.getText().toLowerCase(Locale.ROOT).strip().split("\\s+");
        List<PriceLine> shown = lines.stream().filter(line -> Stream.of(words).allMatch(words(line)::contains))
                .toList();
        viewer.setInput(shown);
        shown.stream().filter(line -> line.number() == selected).findFirst().ifPresent(this::select);
        explain(Optional.empty());
    }

    private static String words(PriceLine line) {
        return String
                .join(" ", line.resource().resource(), line.resource().work().words(), line.element(), line.trade())
                .toLowerCase(Locale.ROOT);
    }

    /** Selects the first line that a rate is used for. */
    void reveal(Rate rate) {
        lines.stream().filter(line -> rates.of(line).filter(rate::equals).isPresent()).findFirst().ifPresent(
                this::select);
    }

    private void select(PriceLine line) {
        viewer.setSelection(new StructuredSelection(line), true);
    }

    private Optional<PriceLine> selected() {
        return Optional.ofNullable((PriceLine) viewer.getStructuredSelection().getFirstElement());
    }

    /** Says why an edit was refused, else what there is to say about the selected line. */
    private void explain(Optional<String> refusal) {
        note.setText(
                refusal.or(() -> selected().flatMap(PriceLine::problem)).or(() -> selected().flatMap(rates::of).map(
                        LineTable::words)).orElse(PriceText.noProblem));
    }

    private static String words(Rate rate) {
        String date = rate.getAsOf() == null ? "" : rate.getAsOf().toString();
        return NLS.bind(PriceText.rateOf, new Object[]{rate.getMark(), rate.getPrice(), unit(rate), String.join(
                ", ", Stream.of(date, rate.getSource()).filter(text -> text != null && !text.isEmpty()).toList())});
    }

    private static String unit(Rate rate) {
        return UnitCode.find(rate.getUnitCode()).map(UnitCode::symbol).orElse(rate.getUnitCode());
    }
}
