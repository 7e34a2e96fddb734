package org.coursewright.estimate.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;

import org.coursewright.core.cost.PriceComparison;
import org.coursewright.core.cost.PriceResults;
import org.coursewright.estimate.ui.chart.ChartCanvas;
import org.coursewright.estimate.ui.part.Figures;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Scenarios beside the plan, each really priced. */
class ScenarioJourneyTest {

    @TempDir
    private Path folder;

    @BeforeEach
    void openTheScenarios() throws Exception {
        Desk.openProject(SmallClinic.copyInto(folder));
        Desk.open(Desk.project().getEstimate().getScenarios().get(0));
        Desk.await(() -> Desk.says("beside the plan"));
    }

    @AfterEach
    void closeTheProject() {
        Desk.closeAll();
    }

    @Test
    void scenarioStandsBesideThePlanInTableAndChart() {
        PriceComparison comparison = Desk.result(PriceResults.COMPARISON);
        Table table = Desk.table("bought blocks");
        assertEquals("USD,as planned,bought blocks", String.join(",", Arrays.stream(table.getColumns()).map(
                TableColumn::getText).toList()));
        assertEquals(Figures.amount(comparison.prices().get(1).total().total()), Desk.row(table, "Total").getText(2));
        assertEquals(Figures.amount(comparison.differences().get(1)), Desk.row(table, "More than planned").getText(2));
        assertEquals("0.00", Desk.row(table, "More than planned").getText(1));
        String spoken = Desk.find(ChartCanvas.class, chart -> chart.chart().isPresent()).chart().orElseThrow().spoken();
        assertTrue(spoken.contains("bought blocks " + Figures.wholeMoney(comparison.prices().get(1).total().total())),
                spoken);
    }
}
