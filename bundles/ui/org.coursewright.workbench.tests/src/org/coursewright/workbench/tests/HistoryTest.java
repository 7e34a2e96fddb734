package org.coursewright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One list of all edits, from which one goes back and forth. */
class HistoryTest {

    private final Window window = new Window();

    @TempDir
    private Path folder;

    @BeforeEach
    void editThreeTimes() throws Exception {
        window.open(SampleProject.in(folder));
        window.select(SampleProject.NAME, "Building", "Storey Ground", "Wall W3");
        for (String mark : List.of("A", "B", "C")) {
            Window.type(window.field(Text.class, "Mark"), mark);
        }
    }

    @AfterEach
    void closeTheProject() {
        window.forgetEverything();
    }

    @Test
    void listsTheEditsAndSaysWhichStateIsSavedAndPresent() throws Exception {
        assertEquals(List.of("Project opened (saved)", "Rename Wall W3 to A", "Rename Wall A to B",
                "Rename Wall B to C \u2013 now"), steps());
    }

    @Test
    void openingAStepGoesBackToItAndALaterOneForthAgain() throws Exception {
        open(1);
        window.item(SampleProject.NAME, "Building", "Storey Ground", "Wall A");
        assertEquals("Rename Wall A to B \u2013 taken back", steps().get(2));

        open(3);
        window.item(SampleProject.NAME, "Building", "Storey Ground", "Wall C");

        open(0);
        assertFalse(window.shell().getText().startsWith("*"));
    }

    @Test
    void undoFromTheMenuShowsInTheList() throws Exception {
        window.choose("Edit", "Undo");
        assertTrue(steps().get(3).endsWith("taken back"));
    }

    @Test
    void longEntryCanBeReadWhole() throws Exception {
        window.select(SampleProject.NAME);
        Window.type(window.field(Text.class, "Name"), "House with a long wall between court and garden".repeat(9));
        Table table = table();
        GC gc = new GC(table);
        int text = gc.textExtent(table.getItem(4).getText()).x;
        gc.dispose();
        assertTrue(text > table.getClientArea().width, () -> "fits anyway: " + text);
        assertTrue(table.getColumn(0).getWidth() >= text);
    }

    private Table table() throws Exception {
        window.page().showView("org.coursewright.workbench.history");
        Widgets.settle();
        return Widgets.find(window.shell(), Table.class,
                table -> table.getItemCount() > 0 && table.getItem(0).getText().startsWith("Project opened"));
    }

    private List<String> steps() throws Exception {
        return Arrays.stream(table().getItems()).map(TableItem::getText).toList();
    }

    private void open(int step) throws Exception {
        Table table = table();
        table.setSelection(step);
        Event event = new Event();
        event.item = table.getItem(step);
        table.notifyListeners(SWT.Selection, event);
        table.notifyListeners(SWT.DefaultSelection, event);
        Widgets.settle();
    }
}
