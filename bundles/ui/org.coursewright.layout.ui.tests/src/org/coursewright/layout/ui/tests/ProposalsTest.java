package org.coursewright.layout.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.Stream;

import org.coursewright.bond.BondResult;
import org.coursewright.core.check.ProjectResults;
import org.coursewright.core.cost.PriceResults;
import org.coursewright.core.derive.DerivationGraph;
import org.coursewright.core.session.ProjectSession;
import org.coursewright.core.session.ProjectStore;
import org.coursewright.layout.ui.proposal.ProposalsView;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Opening;
import org.coursewright.model.edit.command.MoveOpeningCommand;
import org.coursewright.model.project.Project;
import org.coursewright.model.proposal.Proposal;
import org.coursewright.model.proposal.ProposalState;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Proposals are found, weighed, answered and kept, all in their view. */
class ProposalsTest {

    @TempDir
    private Path folder;
    private Path file;
    private Opening window;

    @BeforeEach
    void openTheProjectAndTheView() throws Exception {
        file = SmallHouse.in(folder);
        window = OpenFace.of(file, "W1").opening("N1");
        OpenFace.page().showView(ProposalsView.ID);
        OpenFace.settle();
    }

    @AfterEach
    void closeTheProject() {
        OpenFace.closeAll();
    }

    private static Project project() {
        return OpenFace.active().map(ProjectSession::project).orElseThrow();
    }

    private static Table table() {
        return Screen.all(Table.class).filter(table -> table.getColumnCount() == 9).findFirst().orElseThrow();
    }

    private static Proposal found() {
        Screen.press("Find Proposals");
        OpenFace.await(() -> table().getItemCount() > 0);
        return project().getProposals().get(0);
    }

    private static void selectTheFirst() {
        table().setSelection(0);
        table().notifyListeners(SWT.Selection, new Event());
        OpenFace.settle();
    }

    private static boolean says(String part) {
        return Screen.labels().stream().anyMatch(text -> text.contains(part));
    }

    private static Button button(String words) {
        return Screen.button(Screen.all(Button.class), words);
    }

    @Test
    void effectIsToldBeforeAProposalIsAcceptedAndAcceptingIsOneStep() throws Exception {
        Length before = window.getOffset();
        Proposal proposal = found();
        assertEquals(before, window.getOffset());

        selectTheFirst();
        OpenFace.await(() -> says("cut pieces become"));
        assertEquals(before, window.getOffset());
        Screen.press("Accept");

        assertEquals(proposal.getTo(), window.getOffset());
        assertEquals(ProposalState.ACCEPTED, proposal.getState());
        assertEquals("Accepted", table().getItem(0).getText(0));

        OpenFace.command("org.eclipse.ui.edit.undo");
        assertEquals(before, window.getOffset());
        assertEquals(ProposalState.OPEN, proposal.getState());
    }

    @Test
    void effectThatIsToldIsWhatTheBuildingTakesOnceTheProposalIsAccepted() {
        found();
        String before = counted();
        selectTheFirst();
        OpenFace.await(() -> says("The price with mark-ups"));
        String told = Screen.labels().stream().filter(text -> text.startsWith("Accepting")).findFirst().orElseThrow();
        Screen.press("Accept");
        String after = counted();

        assertNotEquals(before, after);
        assertEquals("%s | %s".formatted(before, after), told.replaceAll(
                ".*: ([0-9]+) cut pieces become ([0-9]+), ([0-9]+) short laps become ([0-9]+)[.]"
                        + " The price with mark-ups is (.*) before and (.*) after: .* less[.].*",
                "$1 cuts, $3 laps, $5 | $2 cuts, $4 laps, $6"));
    }

    /** Cuts, short laps and price of the project as it is. */
    private static String counted() {
        DerivationGraph results = OpenFace.active().map(ProjectSession::derived).orElseThrow();
        BondResult laid = results.get(ProjectResults.LAYOUT).result();
        BigDecimal price = results.get(PriceResults.PRICE).total().total().rounded().amount();
        return String.format(Locale.ROOT, "%d cuts, %d laps, %,.2f USD", laid.cutPieces(), laid.lapViolations(), price);
    }

    @Test
    void refusedProposalWithItsCommentIsInTheFile() throws Exception {
        found();
        selectTheFirst();
        Screen.typeIntoNextDialog("The lintel is ordered.");
        Screen.press("Comment");
        Screen.press("Refuse");
        OpenFace.command("org.eclipse.ui.file.save");

        Proposal read = new ProjectStore().load(file).getProposals().get(0);
        assertEquals(ProposalState.REFUSED, read.getState());
        assertEquals("The lintel is ordered.", read.getComment());
        assertTrue(read.getReason().startsWith("Spares "));
        assertEquals("N1", read.getOpening().getMark());
    }

    @Test
    void effectOfARefusedProposalIsToldAsOfNow() {
        found();
        selectTheFirst();
        OpenFace.await(() -> says("P1 alone, in the whole building"));
        assertFalse(says("as of now"));
        Screen.press("Refuse");
        selectTheFirst();

        OpenFace.await(() -> says("as of now; the line of"));
        assertTrue(table().getColumn(7).getToolTipText().contains("in its own wall"));
    }

    @Test
    void refusedProposalIsMarkedTooOnceTheDimensionHasChanged() {
        found();
        selectTheFirst();
        Screen.press("Refuse");
        OpenFace.active().ifPresent(
                session -> session.execute(new MoveOpeningCommand(window, SmallHouse.inches("46"))));
        OpenFace.settle();

        assertEquals("Refused (changed since)", table().getItem(0).getText(0));
    }

    @Test
    void refusedProposalCanBeOpenedAgain() {
        Proposal proposal = found();
        selectTheFirst();
        Screen.press("Refuse");
        selectTheFirst();
        assertFalse(button("Refuse").isEnabled());
        Screen.press("Reopen");

        assertEquals(ProposalState.OPEN, proposal.getState());
    }

    @Test
    void proposalIsMarkedOnceTheDimensionHasChanged() {
        found();
        OpenFace.active().ifPresent(
                session -> session.execute(new MoveOpeningCommand(window, SmallHouse.inches("46"))));
        OpenFace.settle();

        assertTrue(table().getItem(0).getText(0).contains("changed since"), () -> Stream.of(table().getItems())
                .map(Object::toString).toList().toString());
    }

    @Test
    void nothingFoundIsSaid() {
        window.setMoveTolerance(Length.ZERO);
        Screen.press("Find Proposals");

        OpenFace.await(() -> says("No change within the tolerances"));
        assertEquals(0, table().getItemCount());
    }
}
