package org.coursewright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.coursewright.core.session.ProjectStore;
import org.coursewright.model.building.Wall;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.PartInitException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From opening a project to closing it, through the widgets. */
class EditingJourneyTest {

    private final Window window = new Window();

    @TempDir
    private Path folder;
    private Path file;

    @BeforeEach
    void openTheProject() throws Exception {
        file = SampleProject.in(folder);
        window.open(file);
    }

    @AfterEach
    void closeTheProject() {
        window.forgetEverything();
    }

    @Test
    void navigatorShowsTheBuildingDownToItsOpenings() throws PartInitException {
        assertEquals(List.of("Wall W1", "Wall W2", "Wall W3", "Wall W4"),
                window.labels(window.item(SampleProject.NAME, "Building",
                        "Storey Ground")));
        assertEquals(List.of("Door D1"),
                window.labels(window.item(SampleProject.NAME, "Building", "Storey Ground", "Wall W1")));
        assertEquals(List.of("Unit type Block 14"),
                window.labels(window.item(SampleProject.NAME, "Catalogue", "Units")));
    }

    @Test
    void titleNamesTheProject() {
        assertEquals(SampleProject.NAME + " \u2013 Coursewright", window.shell().getText());
    }

    @Test
    void markEditedInTheTreeIsUndoneAndRedoneThroughTheMenu() throws PartInitException {
        renameInTree("Wall W3", "North");
        assertEquals(List.of("Wall W1", "Wall W2", "Wall North", "Wall W4"), walls());

        window.choose("Edit", "Undo Rename Wall W3 to North");
        assertEquals(List.of("Wall W1", "Wall W2", "Wall W3", "Wall W4"), walls());

        window.choose("Edit", "Redo Rename Wall W3 to North");
        assertEquals(List.of("Wall W1", "Wall W2", "Wall North", "Wall W4"), walls());
    }

    @Test
    void savedEditIsInTheFile() throws Exception {
        String before = Files.readString(file);
        renameInTree("Wall W3", "North");
        assertTrue(window.shell().getText().startsWith("*"));

        window.choose("File", "Save");

        assertFalse(window.shell().getText().startsWith("*"));
        assertFalse(Files.readString(file).equals(before));
        assertEquals(List.of("W1", "W2", "North", "W4"), new ProjectStore().load(file).getBuilding().getStoreys().get(
                0).getWalls().stream().map(Wall::getMark).toList());
    }

    @Test
    void closingAsksBeforeEditsAreLost() throws PartInitException {
        renameInTree("Wall W3", "North");
        Dialogs question = Dialogs.answer("Cancel");
        window.choose("File", "Close Project");

        assertTrue(question.said().contains(SampleProject.NAME));
        assertEquals(List.of("Wall W1", "Wall W2", "Wall North", "Wall W4"), walls());
    }

    @Test
    void markThatIsTakenIsRefusedWithTheReasonInTheStatusLine() throws PartInitException {
        renameInTree("Wall W3", "W2");

        assertEquals(List.of("Wall W1", "Wall W2", "Wall W3", "Wall W4"), walls());
        assertTrue(window.shows("The mark W2 is taken by another"), "the status line says why");
    }

    @Test
    void deletedWallComesBackWithItsOpenings() throws PartInitException {
        window.select(SampleProject.NAME, "Building", "Storey Ground", "Wall W1");
        window.choose("Edit", "Delete");
        assertEquals(List.of("Wall W2", "Wall W3", "Wall W4"), walls());

        window.choose("Edit", "Undo Remove Wall W1");
        assertEquals(List.of("Door D1"), window.labels(window.item(SampleProject.NAME, "Building", "Storey Ground",
                "Wall W1")));
    }

    private List<String> walls() throws PartInitException {
        return window.labels(window.item(SampleProject.NAME, "Building", "Storey Ground"));
    }

    private void renameInTree(String from, String to) throws PartInitException {
        TreeItem item = window.select(SampleProject.NAME, "Building", "Storey Ground", from);
        window.choose("Edit", "Rename");
        Window.type(Widgets.find(item.getParent(), Text.class), to);
    }
}
