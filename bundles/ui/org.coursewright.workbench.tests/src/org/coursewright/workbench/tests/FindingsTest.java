package org.coursewright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is wrong in a project is listed after each edit, and leads to its element. */
class FindingsTest {

    private final Window window = new Window();

    @TempDir
    private Path folder;

    @AfterEach
    void closeTheProject() {
        window.forgetEverything();
    }

    @Test
    void saysWhatToDoWhileNoProjectIsOpen() {
        assertTrue(window.shows("Open a project to see here"));
    }

    @Test
    void openingMovedBeyondItsWallIsListedAndUndoTakesItAway() throws Exception {
        window.open(SampleProject.in(folder));
        window.select(SampleProject.NAME, "Building", "Storey Ground", "Wall W1", "Door D1");
        Window.type(window.field(Text.class, "Offset"), "40'");
        Widgets.await(() -> finding("opening D1 in wall W1", "It reaches from 40'-0\"").isPresent());

        window.choose("Edit", "Undo");
        Widgets.await(() -> finding("opening D1 in wall W1", "It reaches from 40'-0\"").isEmpty());
    }

    @Test
    void selectedFindingLeadsToItsElement() throws Exception {
        window.open(SampleProject.in(folder));
        window.select(SampleProject.NAME, "Building", "Storey Ground", "Wall W1", "Door D1");
        Window.type(window.field(Text.class, "Offset"), "40'");
        window.select(SampleProject.NAME);
        Widgets.await(() -> finding("opening D1 in wall W1", "It reaches from 40'-0\"").isPresent());

        select(finding("opening D1 in wall W1", "It reaches from 40'-0\"").orElseThrow());
        Widgets.await(() -> window.shows("Door D1"));
        assertEquals("Door D1", window.tree().getSelection()[0].getText());
    }

    private Optional<TableItem> finding(String element, String message) {
        return Widgets.in(window.shell()).filter(Table.class::isInstance).map(Table.class::cast)
                .flatMap(table -> Arrays.stream(table.getItems())).filter(item -> item.getText().equals(element)
                        && item.getText(1).startsWith(message))
                .findFirst();
    }

    private void select(TableItem item) throws Exception {
        window.page().showView("org.coursewright.workbench.findings");
        item.getParent().setSelection(item);
        Event event = new Event();
        event.item = item;
        item.getParent().notifyListeners(SWT.Selection, event);
        Widgets.settle();
    }
}
