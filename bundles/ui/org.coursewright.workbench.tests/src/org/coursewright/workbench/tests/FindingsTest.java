package org.coursewright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;

import org.coursewright.model.building.Opening;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PartInitException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is wrong in a project is listed after each edit, and leads to its element. */
class FindingsTest {

    private static final String[] STOREY = {SampleProject.NAME, "Building", "Storey Ground"};
    private static final String[] OTHER_WALL = {SampleProject.NAME, "Building", "Storey Ground", "Wall W3"};

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
        moveTheDoorBeyondItsWall();

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

    @Test
    void findingIsAProblemMarkerOfThePlatformThatLeadsToItsElement() throws Exception {
        window.open(SampleProject.in(folder));
        moveTheDoorBeyondItsWall();

        IMarker marker = Arrays.stream(ResourcesPlugin.getWorkspace().getRoot().findMarkers(IMarker.PROBLEM, true,
                IResource.DEPTH_INFINITE)).filter(each -> "opening.beyond-wall".equals(each.getAttribute("code", "")))
                .findFirst().orElseThrow();

        assertEquals(IMarker.SEVERITY_ERROR, marker.getAttribute(IMarker.SEVERITY, 0));
        assertEquals(folder.resolve("shed.coursewright").toUri(), marker.getResource().getLocationURI());
        assertEquals("D1", ((Opening) Adapters.adapt(marker, EObject.class)).getMark());
        window.forgetEverything();
        assertFalse(marker.exists());
    }

    @Test
    void elementWithAFindingAndAllThatItIsInBearASign() throws Exception {
        window.open(SampleProject.in(folder));
        byte[] storey = picture(STOREY);
        byte[] other = picture(OTHER_WALL);
        moveTheDoorBeyondItsWall();

        Widgets.await(() -> !Arrays.equals(storey, picture(STOREY)));
        assertArrayEquals(other, picture(OTHER_WALL));

        window.choose("Edit", "Undo");
        Widgets.await(() -> Arrays.equals(storey, picture(STOREY)));
    }

    private byte[] picture(String... path) {
        try {
            return window.item(path).getImage().getImageData().data;
        } catch (PartInitException e) {
            throw new AssertionError(e);
        }
    }

    private void moveTheDoorBeyondItsWall() throws Exception {
        window.select(SampleProject.NAME, "Building", "Storey Ground", "Wall W1", "Door D1");
        Window.type(window.field(Text.class, "Offset"), "40'");
        Widgets.await(() -> finding("opening D1 in wall W1", "It reaches from 40'-0\"").isPresent());
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
