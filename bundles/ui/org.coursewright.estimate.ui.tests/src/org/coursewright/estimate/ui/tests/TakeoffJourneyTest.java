package org.coursewright.estimate.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

import org.coursewright.bond.Piece;
import org.coursewright.core.bond.LayoutResults;
import org.coursewright.core.cost.PriceResults;
import org.coursewright.core.cost.QuantityTable;
import org.coursewright.core.finding.Severity;
import org.coursewright.layout.ui.editor.WallFaceEditor;
import org.coursewright.measure.DisplayUnit;
import org.coursewright.model.edit.command.SetDisplayUnitCommand;
import org.coursewright.model.project.Project;
import org.eclipse.core.runtime.IAdaptable;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IPersistableElement;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.XMLMemento;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Reading the take-off: grouped, filtered, searched, explained, down to the blocks in their wall. */
class TakeoffJourneyTest {

    private static final int QUANTITY = 3;
    private static final int UNIT = 4;
    private static final int IN_FEET = 5;

    @TempDir
    private Path folder;

    @BeforeEach
    void openTheTakeoff() throws Exception {
        Desk.openProject(SmallClinic.copyInto(folder));
        Desk.open("takeoff");
        Desk.await(() -> tree().getItemCount() > 0);
    }

    @AfterEach
    void closeTheProject() {
        Desk.closeAll();
    }

    @Test
    void everyLineIsThereUnderItsKind() {
        QuantityTable table = Desk.result(PriceResults.QUANTITIES);
        assertEquals(table.rows().size(), lines().size());
        assertTrue(Desk.says("%1$d of %1$d lines are shown".formatted(table.rows().size())));
        assertTrue(groups().containsAll(List.of("laid whole", "specials to order", "mortar", "lay")));
    }

    @Test
    void totalOfAGroupIsTheSumOfWhatIsShown() {
        choose("Item or resource");
        TreeItem cement = group("cement");
        double sum = Arrays.stream(cement.getItems()).mapToDouble(item -> number(item.getText(QUANTITY))).sum();
        assertEquals(sum, number(cement.getText(QUANTITY)), 0.003);
        assertEquals("bag", cement.getText(UNIT));

        search("cement B2010");
        assertTrue(number(group("cement").getText(QUANTITY)) < sum);
    }

    /** What is laid of a unit and what is ordered of it are not to be added. */
    @Test
    void unlikeLinesHaveNoTotal() {
        choose("Item or resource");
        assertEquals("", group("B14 stretcher").getText(QUANTITY));
    }

    @Test
    void feetAreShownWhereTheProjectIsInFeet() {
        assertTrue(tree().getColumn(IN_FEET).getWidth() > 0);

        Desk.execute(new SetDisplayUnitCommand(Desk.project(), DisplayUnit.MILLIMETRE, 16));

        Desk.await(() -> lines().stream().anyMatch(item -> item.getText().contains(" mm ")));
        assertEquals(0, tree().getColumn(IN_FEET).getWidth());
    }

    @Test
    void notesAreNotCountedAsTrouble() {
        QuantityTable table = Desk.result(PriceResults.QUANTITIES);
        assertTrue(table.findings().stream().allMatch(finding -> finding.severity() == Severity.NOTE));
        assertFalse(Desk.says("see the Findings view"));
    }

    @Test
    void filterAndSearchNarrowTheTable() {
        choose("mortar");
        assertEquals(List.of("mortar"), groups());
        search("lime");
        assertTrue(lines().stream().allMatch(item -> item.getText().equals("lime")));
        search("no such thing");
        assertEquals(0, tree().getItemCount());
        assertTrue(Desk.says("0 of "));
    }

    @Test
    void lineIsExplainedAndLeadsToItsBlocksInTheWall() {
        select(lines().stream().filter(item -> item.getText().equals("B14 stretcher") && item.getText(1).equals(
                "laid whole")).findFirst().orElseThrow());
        assertTrue(Desk.says("Show me: B14 stretcher, laid whole"));
        assertTrue(Desk.says("= pieces counted"));
        assertFalse(Desk.button("Show in Wall").isEnabled());
        assertEquals("1 to " + Desk.result(LayoutResults.LAYOUT).courses("C1").lastKey(), Desk.row(Desk.table(
                "Taken from"), "C1").getText(1));
        Desk.select(Desk.row(Desk.table("Taken from"), "C1"));

        Desk.press(Desk.button("Show in Wall"));

        WallFaceEditor editor = (WallFaceEditor) Desk.page().getActiveEditor();
        assertEquals("Wall C1", editor.getTitle());
        Desk.await(() -> editor.markedPieces() > 0);
        assertEquals(wholePieces("C1"), editor.markedPieces());
        assertTrue(Desk.says("Marked, "));

        Desk.press(Desk.button("Clear Marks"));
        assertEquals(0, editor.markedPieces());
    }

    @Test
    void editorComesBackAtTheNextStart() {
        IPersistableElement kept = Desk.page().getActiveEditor().getEditorInput().getPersistable();
        XMLMemento memento = XMLMemento.createWriteRoot("input");
        kept.saveState(memento);
        Desk.closeAll();

        IAdaptable again = PlatformUI.getWorkbench().getElementFactory(kept.getFactoryId()).createElement(memento);

        assertEquals(Desk.project(), again.getAdapter(Project.class));
    }

    private static long wholePieces(String wall) {
        return Desk.result(LayoutResults.LAYOUT).result().walls().stream().filter(each -> each.mark()
                .equals(wall)).flatMap(each -> each.courses().stream()).flatMap(course -> course.runs().stream())
                .flatMap(
                        run -> run.pieces().stream())
                .filter(piece -> piece.kind() == Piece.Kind.WHOLE).count();
    }

    private static Tree tree() {
        return Desk.find(Tree.class, tree -> tree.getColumnCount() > UNIT);
    }

    private static List<String> groups() {
        return Arrays.stream(tree().getItems()).map(TreeItem::getText).toList();
    }

    private static TreeItem group(String title) {
        return Arrays.stream(tree().getItems()).filter(item -> item.getText().equals(title)).findFirst().orElseThrow(
                () -> new AssertionError("No group " + title + " among " + groups()));
    }

    private static List<TreeItem> lines() {
        return Arrays.stream(tree().getItems()).flatMap(group -> Arrays.stream(group.getItems())).toList();
    }

    private static double number(String text) {
        return Double.parseDouble(text.replace(",", ""));
    }

    private static void choose(String choice) {
        Combo combo = Desk.find(Combo.class, each -> List.of(each.getItems()).contains(choice));
        combo.setText(choice);
        Desk.select(combo);
    }

    private static void search(String words) {
        Desk.find(Text.class, text -> (text.getStyle() & SWT.SEARCH) != 0).setText(words);
        Desk.settle();
    }

    private static void select(TreeItem item) {
        item.getParent().setFocus();
        item.getParent().setSelection(item);
        Event event = new Event();
        event.item = item;
        item.getParent().notifyListeners(SWT.Selection, event);
        Desk.settle();
    }
}
