package org.coursewright.estimate.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

import org.coursewright.core.cost.PriceComparison;
import org.coursewright.core.cost.PriceResults;
import org.coursewright.estimate.ui.chart.ChartCanvas;
import org.coursewright.estimate.ui.part.Figures;
import org.coursewright.model.building.Bond;
import org.coursewright.model.building.Wall;
import org.coursewright.model.estimate.Scenario;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Scenarios beside the plan, each really priced. */
class ScenarioJourneyTest {

    @TempDir
    private Path folder;
    /** The first figures of the scenario in each row, right after the editor has opened. */
    private List<String> atOnce;

    @BeforeEach
    void openTheScenarios() throws Exception {
        Desk.openProject(SmallClinic.copyInto(folder));
        Desk.open(Desk.project().getEstimate().getScenarios().get(0));
        atOnce = Arrays.stream(Desk.table("bought blocks").getItems()).map(row -> row.getText(0) + " " + row.getText(2))
                .toList();
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

    @Test
    void scenariosAreThereBeforeTheirFigures() {
        assertTrue(atOnce.containsAll(List.of("Total \u2026", "More than planned \u2026", "P80 \u2026")),
                atOnce::toString);
        assertFalse(Arrays.stream(Desk.table("bought blocks").getItems()).anyMatch(row -> row.getText(2).equals(
                "\u2026")));
    }

    @Test
    void newScenarioIsLaidAndPricedBesideTheOthersAndCanBeTakenBack() throws Exception {
        Desk.inDialog(() -> Desk.press(Desk.button("New Scenario\u2026")), dialog -> {
            Desk.behind(dialog, "Mark:", Text.class).setText("thick store");
            assertFalse(Desk.button(dialog, "Add").isEnabled(), "nothing differs yet");
            Desk.behind(dialog, "In words:", Text.class).setText("South wall of the store laid as headers.");
            Desk.tick(Desk.row(dialog, "Wall S1"));
            Combo bond = Desk.behind(dialog, "Laid as:", Combo.class);
            bond.select(bond.indexOf(otherBond()));
            Desk.select(bond);
            Desk.press(Desk.button(dialog, "Add"));
        });
        Scenario added = Desk.project().getEstimate().getScenarios().get(1);
        assertEquals("thick store", added.getMark());
        assertEquals("S1", added.getWallChoices().get(0).getWalls().get(0).getMark());
        Desk.await(() -> Desk.says("2 scenarios beside the plan"));
        assertTrue(Arrays.stream(Desk.table("bought blocks").getColumns()).anyMatch(column -> column.getText().equals(
                "thick store")));
        Table table = Desk.table("bought blocks");
        PriceComparison comparison = Desk.result(PriceResults.COMPARISON);
        assertEquals(Figures.amount(comparison.prices().get(2).total().total()), Desk.row(table, "Total").getText(3));
        assertNotEquals(Desk.row(table, "Total").getText(1), Desk.row(table, "Total").getText(3));

        Desk.undo();
        assertEquals(1, Desk.project().getEstimate().getScenarios().size());
    }

    @Test
    void markOfAnotherScenarioIsRefusedBeforeItIsAdded() {
        Desk.inDialog(() -> Desk.press(Desk.button("New Scenario\u2026")), dialog -> {
            Combo specials = Desk.behind(dialog, "Specials:", Combo.class);
            specials.select(1);
            Desk.select(specials);
            Desk.behind(dialog, "Mark:", Text.class).setText("bought blocks");
            assertFalse(Desk.button(dialog, "Add").isEnabled());
            Desk.behind(dialog, "Mark:", Text.class).setText("all cut");
            assertTrue(Desk.button(dialog, "Add").isEnabled());
            Desk.press(Desk.button(dialog, "Cancel"));
        });
        assertEquals(1, Desk.project().getEstimate().getScenarios().size());
    }

    private static String otherBond() {
        Wall store = Desk.project().getBuilding().getStoreys().get(0).getWalls().stream().filter(wall -> wall.getMark()
                .equals("S1")).findFirst().orElseThrow();
        return store.getBond() == Bond.STRETCHER ? "Header" : "Stretcher";
    }
}
