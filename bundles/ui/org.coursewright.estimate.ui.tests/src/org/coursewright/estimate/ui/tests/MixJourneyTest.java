package org.coursewright.estimate.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;

import org.coursewright.core.cost.MixSheet;
import org.coursewright.core.cost.PriceResults;
import org.coursewright.estimate.ui.part.Figures;
import org.coursewright.model.catalogue.MixDesign;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Table;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Designing a mix: parts typed over, the batch card that follows, the checks. */
class MixJourneyTest {

    private static final int PARTS = 1;
    private static final int MASS = 4;

    @TempDir
    private Path folder;

    @BeforeEach
    void openTheMixes() throws Exception {
        Desk.openProject(SmallClinic.copyInto(folder));
        Desk.open("mixes");
        Desk.await(() -> parts().getItemCount() > 0);
    }

    @AfterEach
    void closeTheProject() {
        Desk.closeAll();
    }

    @Test
    void batchCardIsForTheMixerAtHand() {
        choose("earth");
        MixSheet.Batch batch = sheet("earth").batch().orElseThrow();
        assertTrue(Desk.says("One batch in " + batch.mixer() + " gives " + Figures.number(batch.litres(), 1) + " L"));
        assertEquals(batch.lines().size(), Desk.table("Put in").getItemCount());
        assertEquals("pack of 94 lb", Desk.row(Desk.table("Put in"), "cement").getText(2));
        assertTrue(Desk.says("Add " + Figures.number(batch.water(), 1) + " L of water"));
    }

    @Test
    void partsTypedOverChangeEverythingAndComeBackWithUndo() throws Exception {
        choose("cement-lime");
        String before = Desk.row(parts(), "sand").getText(MASS);

        Desk.typeOver(Desk.row(parts(), "sand"), PARTS, "6");

        assertEquals(new BigDecimal("6"), mix("cement-lime").getParts().get(2).getParts());
        Desk.await(() -> !Desk.row(parts(), "sand").getText(MASS).equals(before));
        assertEquals("cement-lime", choice().getText());

        Desk.undo();
        Desk.await(() -> Desk.row(parts(), "sand").getText(MASS).equals(before));
    }

    @Test
    void largestGrainIsHeldAgainstTheThinnestJoint() {
        choose("cement-lime");
        boolean fits = sheet("cement-lime").grain().orElseThrow().fits();
        assertTrue(Desk.says(fits ? "the joint is at least twice the grain" : "Screen the sand finer"));
    }

    @Test
    void waterIsTypedAsAShare() {
        choose("earth");
        Desk.type(Desk.field("Most, of dry mass"), "0.3");
        assertEquals(new BigDecimal("0.3"), mix("earth").getMostWaterShare());
    }

    @Test
    void mixIsOpenedFromTheNavigator() throws Exception {
        Desk.open(mix("earth"));
        Desk.await(() -> choice().getText().equals("earth"));
    }

    private static Table parts() {
        return Desk.table("By volume");
    }

    private static Combo choice() {
        return Desk.find(Combo.class, combo -> List.of(combo.getItems()).contains("cement-lime"));
    }

    private static void choose(String mark) {
        choice().setText(mark);
        Desk.select(choice());
    }

    private static MixSheet sheet(String mark) {
        return Desk.result(PriceResults.MIXES).sheets().stream().filter(sheet -> sheet.mark().equals(
                mark)).findFirst().orElseThrow();
    }

    private static MixDesign mix(String mark) {
        return Desk.project().getCatalogue().getMixDesigns().stream().filter(mix -> mark.equals(mix.getMark()))
                .findFirst().orElseThrow();
    }
}
