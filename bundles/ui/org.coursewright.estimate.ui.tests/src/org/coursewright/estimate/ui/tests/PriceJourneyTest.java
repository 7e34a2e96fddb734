package org.coursewright.estimate.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;

import org.coursewright.core.cost.MakeOrCutReport;
import org.coursewright.core.cost.PriceOutcome;
import org.coursewright.core.cost.PriceResults;
import org.coursewright.estimate.ui.chart.ChartCanvas;
import org.coursewright.estimate.ui.part.Figures;
import org.coursewright.model.edit.command.RemoveRateCommand;
import org.coursewright.model.estimate.Rate;
import org.coursewright.model.estimate.RateKind;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.widgets.Table;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pricing the building: a rate typed over, the total that follows, and the way back. */
class PriceJourneyTest {

    private static final int RATE = 6;

    @TempDir
    private Path folder;

    @BeforeEach
    void openThePrice() throws Exception {
        Desk.openProject(SmallClinic.copyInto(folder));
        Desk.open("price");
        Desk.await(() -> lines().getItemCount() > 0);
    }

    @AfterEach
    void closeTheProject() {
        Desk.closeAll();
    }

    @Test
    void totalFollowsARateAndComesBackWithUndo() throws Exception {
        String before = total();
        assertTrue(Desk.says("Total " + before));

        Desk.typeOver(Desk.row(lines(), "mason", "lay", "G2040"), RATE, "76 USD");

        assertEquals(new BigDecimal("76"), rate("mason").getPrice().amount());
        String after = total();
        assertNotEquals(before, after);
        Desk.await(() -> Desk.says("Total " + after));
        assertEquals("76 USD", Desk.row(lines(), "mason", "lay", "G2040").getText(RATE));

        Desk.undo();
        Desk.await(() -> Desk.says("Total " + before));
        assertEquals(new BigDecimal("38"), rate("mason").getPrice().amount());
    }

    @Test
    void rateThatCannotBeReadIsRefusedAndChangesNothing() {
        Desk.typeOver(Desk.row(lines(), "mason", "lay", "G2040"), RATE, "a lot");
        assertTrue(Desk.says("a lot"));
        assertEquals(new BigDecimal("38"), rate("mason").getPrice().amount());
    }

    @Test
    void lineWithoutRateIsToldAndTheTotalCalledTooLow() throws Exception {
        Desk.execute(new RemoveRateCommand(rate("mason")));
        Desk.await(() -> Desk.says("so the total is too low"));
        Desk.undo();
        Desk.await(() -> !Desk.says("so the total is too low"));
    }

    @Test
    void missingRateIsAddedByTypingItsPrice() {
        Desk.execute(new RemoveRateCommand(rate("mason")));
        Desk.await(() -> Desk.row(lines(), "mason", "lay", "G2040").getText(RATE).equals("none"));

        Desk.typeOver(Desk.row(lines(), "mason", "lay", "G2040"), RATE, "40 USD");

        assertEquals(RateKind.LABOUR, rate("mason").getKind());
        assertEquals("HUR", rate("mason").getUnitCode());
        Desk.await(() -> !Desk.says("so the total is too low"));
    }

    @Test
    void everyLengthIsComparedAsSpecialAndAsCut() {
        page(3);
        Desk.await(() -> Desk.table("Pays from").getItemCount() > 0);
        MakeOrCutReport report = Desk.result(PriceResults.MAKE_OR_CUT);
        Table table = Desk.table("Pays from");
        assertEquals(report.lines().size(), table.getItemCount());
        assertEquals(Figures.money(report.lines().get(0).making()), table.getItem(0).getText(6));
    }

    @Test
    void overheadIsTypedAsAShare() {
        page(1);
        Desk.type(Desk.field("Overhead"), "0.2");
        assertEquals(new BigDecimal("0.2"), Desk.project().getEstimate().getOverheadShare());
        String overhead = Figures.amount(price().total().overhead());
        Desk.await(() -> Desk.row(Desk.table("Of total"), "Overhead").getText(1).equals(overhead));
    }

    @Test
    void rangeShowsWhatDrivesIt() {
        page(2);
        assertEquals(price().range().orElseThrow().lines().get(0).name(),
                Desk.table("Of variance").getItem(0).getText());
        String spoken = Desk.find(ChartCanvas.class, chart -> chart.chart().isPresent()).chart().orElseThrow().spoken();
        assertTrue(spoken.contains("P90 " + Figures.wholeMoney(price().range().orElseThrow().p90())), spoken);
    }

    @Test
    void selectedLineHasItsRateInTheProperties() throws Exception {
        Desk.page().showView("org.coursewright.workbench.properties");
        Desk.page().activate(Desk.page().getActiveEditor());
        Desk.select(Desk.row(lines(), "mason", "lay", "G2040"));
        assertTrue(Desk.says("mason: 38 USD for one h"));
        Desk.await(() -> Desk.field("Mark:").getText().equals("mason"));
    }

    @Test
    void rateIsOpenedFromTheNavigator() throws Exception {
        Desk.open("takeoff");
        assertEquals("org.coursewright.estimate.ui.price", Desk.open(rate("mason")).getSite().getId());
        assertEquals("mason", lines().getSelection()[0].getText());
    }

    private static void page(int index) {
        CTabFolder pages = Desk.find(CTabFolder.class,
                folder -> folder.getItemCount() == 4 && folder.getItem(1).getText()
                        .contains("Build"));
        pages.setSelection(index);
        Desk.select(pages);
    }

    private static Table lines() {
        return Desk.table("Trade");
    }

    private static PriceOutcome price() {
        return Desk.result(PriceResults.RANGE);
    }

    private static String total() {
        return Figures.money(price().total().total());
    }

    private static Rate rate(String mark) {
        return Desk.project().getEstimate().getRates().stream().filter(rate -> mark.equals(rate.getMark()))
                .findFirst().orElseThrow();
    }
}
