package org.coursewright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;

import org.coursewright.core.session.ProjectStore;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PartInitException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the properties view shows and takes, through its fields. */
class PropertiesTest {

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
    void saysWhatToDoWhileNothingIsSelected() {
        window.forgetEverything();

        assertTrue(window.shows("Select a wall"));
    }

    @Test
    void markEditedInItsFieldShowsInTheTreeAndSurvivesSaving() throws Exception {
        selectWall();
        Window.type(window.field(Text.class, "Mark"), "North");
        assertNotNull(window.item(SampleProject.NAME, "Building", "Storey Ground", "Wall North"));

        window.choose("Edit", "Undo Rename Wall W3 to North");
        assertEquals("W3", window.field(Text.class, "Mark").getText());
        assertNotNull(window.item(SampleProject.NAME, "Building", "Storey Ground", "Wall W3"));

        window.choose("Edit", "Redo Rename Wall W3 to North");
        window.choose("File", "Save");
        assertEquals("North", new ProjectStore().load(file).getBuilding().getStoreys().get(0).getWalls().get(2)
                .getMark());
    }

    @Test
    void lengthsAreShownInTheUnitOfTheProject() throws PartInitException {
        selectWall();

        assertEquals("8'-3\"", window.field(Text.class, "Height").getText());
    }

    @Test
    void lengthTypedInAnotherUnitIsTakenInThatUnit() throws PartInitException {
        selectWall();
        Window.type(window.field(Text.class, "Height"), "2.54 m");

        assertEquals("8'-4\"", window.field(Text.class, "Height").getText());
    }

    @Test
    void textThatIsNoLengthIsRefusedWithTheReasonAndChangesNothing() throws PartInitException {
        selectWall();
        Window.type(window.field(Text.class, "Height"), "eight feet");

        assertTrue(window.shows("\"eight feet\" is not a length"));
        assertFalse(window.shell().getText().startsWith("*"));
        press(window.field(Text.class, "Height"), SWT.ESC);
        assertEquals("8'-3\"", window.field(Text.class, "Height").getText());
        assertFalse(window.shows("\"eight feet\" is not a length"));
    }

    @Test
    void heightOfNothingIsRefusedByTheModel() throws PartInitException {
        selectWall();
        Window.type(window.field(Text.class, "Height"), "0");

        assertTrue(window.shows("The Height of Wall W3 cannot be"));
        assertFalse(window.shell().getText().startsWith("*"));
    }

    @Test
    void eachGroupHasOneHeading() throws PartInitException {
        window.select(SampleProject.NAME, "Building", "Storey Ground", "Wall W1", "Door D1");

        assertEquals(1, Widgets.in(window.shell()).filter(
                control -> control instanceof Label label && label.getText().equals("Size")).count());
    }

    @Test
    void bondIsChosenFromAList() throws PartInitException {
        selectWall();
        Combo bond = window.field(Combo.class, "Bond");
        bond.select(bond.indexOf("Header"));
        Widgets.select(bond);

        assertTrue(window.shell().getText().startsWith("*"));
        window.choose("Edit", "Undo Change the Bond of Wall W3");
        assertEquals("Stretcher", window.field(Combo.class, "Bond").getText());
    }

    private void selectWall() throws PartInitException {
        window.select(SampleProject.NAME, "Building", "Storey Ground", "Wall W3");
    }

    private static void press(Text field, int key) {
        Event event = new Event();
        event.keyCode = key;
        event.character = (char) key;
        field.notifyListeners(SWT.KeyDown, event);
        Widgets.settle();
    }
}
