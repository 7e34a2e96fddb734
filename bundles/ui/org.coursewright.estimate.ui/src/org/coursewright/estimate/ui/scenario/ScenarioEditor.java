package org.coursewright.estimate.ui.scenario;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import org.coursewright.core.cost.PriceComparison;
import org.coursewright.core.cost.PriceOutcome;
import org.coursewright.core.cost.PriceResults;
import org.coursewright.estimate.ui.chart.ChartCanvas;
import org.coursewright.estimate.ui.chart.StackedBars;
import org.coursewright.estimate.ui.part.EstimateEditor;
import org.coursewright.estimate.ui.part.EstimatePart;
import org.coursewright.estimate.ui.part.Figures;
import org.coursewright.estimate.ui.part.ShownResult;
import org.coursewright.estimate.ui.price.CostPart;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** The plan beside every scenario, each really laid and priced: as bars and as a table. */
public final class ScenarioEditor extends EstimateEditor {

    private static final String NEW = "org.coursewright.estimate.ui.newScenario";

    private ChartCanvas chart;
    private Label descriptions;
    private ScenarioTable table;
    private ShownResult<PriceComparison> comparison;

    /** Called by the platform. */
    public ScenarioEditor() {
        super(EstimatePart.SCENARIOS);
    }

    @Override
    protected void createBody(Composite body) {
        addButton(ScenarioText.newScenario, () -> run(NEW, Map.of()));
        GridLayoutFactory.fillDefaults().margins(8, 4).spacing(4, 6).applyTo(body);
        chart = new ChartCanvas(body, ScenarioText.accessibleChart);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(chart);
        Label note = new Label(body, SWT.WRAP);
        note.setText(ScenarioText.rangeNote);
        GridDataFactory.fillDefaults().grab(true, false).hint(100, SWT.DEFAULT).applyTo(note);
        table = new ScenarioTable(body);
        GridDataFactory.fillDefaults().grab(true, true).hint(100, 120).applyTo(table.control());
        descriptions = new Label(body, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(100, SWT.DEFAULT).applyTo(descriptions);
        comparison = show(PriceResults.COMPARISON, this::take);
    }

    private void take(PriceComparison compared) {
        table.show(compared);
        descriptions.setText(compared.prices().stream().filter(price -> !price.description().isEmpty()).map(price -> NLS
                .bind(ScenarioText.selected, price.scenario(), price.description())).collect(Collectors.joining("\n")));
        descriptions.requestLayout();
        chart.show(Optional.of(new StackedBars(CostPart.ALL.stream().map(CostPart::label).toList(), compared.prices()
                .stream().map(ScenarioEditor::bar).toList(), compared.prices().get(0).currency().getCurrencyCode())));
    }

    private static StackedBars.Bar bar(PriceOutcome price) {
        List<Double> parts = CostPart.ALL.stream().map(part -> part.of(price.total()).amount().doubleValue()).toList();
        return new StackedBars.Bar(ScenarioTable.title(price), parts, Figures.wholeMoney(price.total().total()), price
                .range().map(range -> new StackedBars.Range(range.p10().amount().doubleValue(), range.p50().amount()
                        .doubleValue(), range.p90().amount().doubleValue())));
    }

    @Override
    protected String headline() {
        return Optional.ofNullable(comparison).flatMap(ShownResult::last).map(ScenarioEditor::headline).orElse(
                ScenarioText.notYet);
    }

    private static String headline(PriceComparison compared) {
        PriceOutcome least = compared.prices().stream()
                .min(Comparator.comparing(price -> price.total().total().amount()))
                .orElseThrow();
        String total = Figures.money(least.total().total());
        return compared.prices().size() == 1
                ? NLS.bind(ScenarioText.headlineNone, total)
                : NLS.bind(ScenarioText.headline, new Object[]{compared.prices().size() - 1, least.scenario(), total});
    }

    @Override
    protected void reveal(EObject element) {
        select(Optional.of(element));
    }

    @Override
    public void setFocus() {
        super.setFocus();
        table.control().setFocus();
    }
}
