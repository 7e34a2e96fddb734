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
        assertEquals(List.of("W1", "W2", "W3", "W4"), window.labels(window.item(SampleProject.NAME, "Building",
                "Ground")));
        assertEquals(List.of("D1"), window.labels(window.item(SampleProject.NAME, "Building", "Ground", "W1")));
        assertEquals(List.of("Block 14"), window.labels(window.item(SampleProject.NAME, "Catalogue", "Units")));
    }

    @Test
    void titleNamesTheProject() {
        assertEquals(SampleProject.NAME + " \u2013 Coursewright", window.shell().getText());
    }

    @Test
    void markEditedInTheTreeIsUndoneAndRedoneThroughTheMenu() throws PartInitException {
        renameInTree("W3", "North");
        assertEquals(List.of("W1", "W2", "North", "W4"), walls());

        window.choose("Edit", "Undo");
        assertEquals(List.of("W1", "W2", "W3", "W4"), walls());

        window.choose("Edit", "Redo");
        assertEquals(List.of("W1", "W2", "North", "W4"), walls());
    }

    @Test
    void savedEditIsInTheFile() throws Exception {
        String before = Files.readString(file);
        renameInTree("W3", "North");
        assertTrue(window.shell().getText().startsWith("*"));

        window.choose("File", "Save");

        assertFalse(window.shell().getText().startsWith("*"));
        assertFalse(Files.readString(file).equals(before));
        assertEquals(List.of("W1", "W2", "North", "W4"), new ProjectStore().load(file).getBuilding().getStoreys().get(
                0).getWalls().stream().map(Wall::getMark).toList());
    }

    @Test
    void closingAsksBeforeEditsAreLost() throws PartInitException {
        renameInTree("W3", "North");
        Dialogs question = Dialogs.answer("Cancel");
        window.choose("File", "Close Project");

        assertTrue(question.said().contains(SampleProject.NAME));
        assertEquals(List.of("W1", "W2", "North", "W4"), walls());
    }

    private List<String> walls() throws PartInitException {
        return window.labels(window.item(SampleProject.NAME, "Building", "Ground"));
    }

    private void renameInTree(String from, String to) throws PartInitException {
        TreeItem item = window.select(SampleProject.NAME, "Building", "Ground", from);
        window.choose("Edit", "Rename");
        Window.type(Widgets.find(item.getParent(), Text.class), to);
    }
}
