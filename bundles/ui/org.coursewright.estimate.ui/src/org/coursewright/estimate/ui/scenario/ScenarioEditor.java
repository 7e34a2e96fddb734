package org.coursewright.estimate.ui.scenario;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import org.coursewright.core.cost.PriceOutcome;
import org.coursewright.core.cost.PriceResults;
import org.coursewright.estimate.ui.chart.ChartCanvas;
import org.coursewright.estimate.ui.chart.StackedBars;
import org.coursewright.estimate.ui.part.EstimateEditor;
import org.coursewright.estimate.ui.part.EstimatePart;
import org.coursewright.estimate.ui.part.Figures;
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
    private ScenariosShown scenarios;

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
        scenarios = new ScenariosShown(show(PriceResults.RANGE, any -> refresh()),
                mark -> show(PriceResults.scenario(mark), any -> refresh()), this::hide);
        projectEdited();
    }

    @Override
    protected void projectEdited() {
        scenarios.follow(project());
        refresh();
    }

    private void refresh() {
        List<ScenarioColumn> columns = scenarios.columns(project());
        String currency = columns.stream().flatMap(each -> each.price().stream()).findFirst().map(price -> price
                .currency().getCurrencyCode()).orElse("");
        table.show(columns, currency);
        descriptions.setText(columns.stream().filter(each -> !each.note().isEmpty()).map(each -> NLS.bind(
                ScenarioText.selected, each.mark(), each.note())).collect(Collectors.joining("\n")));
        descriptions.requestLayout();
        chart.show(Optional.of(new StackedBars(CostPart.ALL.stream().map(CostPart::label).toList(), columns.stream()
                .map(ScenarioEditor::bar).toList(), currency)));
    }

    private static StackedBars.Bar bar(ScenarioColumn scenario) {
        return scenario.price().map(price -> bar(scenario.title(), price)).orElseGet(() -> new StackedBars.Bar(scenario
                .title(), CostPart.ALL.stream().map(part -> 0.0).toList(), scenario.noFigure(), Optional.empty()));
    }

    private static StackedBars.Bar bar(String title, PriceOutcome price) {
        List<Double> parts = CostPart.ALL.stream().map(part -> part.of(price.total()).amount().doubleValue()).toList();
        return new StackedBars.Bar(title, parts, Figures.wholeMoney(price.total().total()), price.range().map(
                range -> new StackedBars.Range(range.p10().amount().doubleValue(), range.p50().amount().doubleValue(),
                        range.p90().amount().doubleValue())));
    }

    @Override
    protected String headline() {
        return scenarios == null ? "" : headline(scenarios.columns(project()));
    }

    private static String headline(List<ScenarioColumn> columns) {
        int all = columns.size() - 1;
        if (!columns.stream().allMatch(ScenarioColumn::isThere)) {
            return NLS.bind(ScenarioText.notYet, columns.stream().skip(1).filter(ScenarioColumn::isThere).count(), all);
        }
        PriceOutcome least = columns.stream().flatMap(each -> each.price().stream())
                .min(Comparator.comparing(price -> price.total().total().amount())).orElseThrow();
        String total = Figures.money(least.total().total());
        return all == 0
                ? NLS.bind(ScenarioText.headlineNone, total)
                : NLS.bind(ScenarioText.headline, new Object[]{all, least.scenario(), total});
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
