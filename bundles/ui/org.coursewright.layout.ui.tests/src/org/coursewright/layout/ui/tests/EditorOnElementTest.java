package org.coursewright.layout.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;
import org.coursewright.workbench.OpenProjects;
import org.eclipse.core.runtime.IAdaptable;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IPersistableElement;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.XMLMemento;
import org.eclipse.ui.views.contentoutline.ContentOutline;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What every editor on an element has in common: it comes back at the next start, and it has an outline. */
class EditorOnElementTest {

    @TempDir
    private Path folder;

    @BeforeEach
    void openTheDemo() throws Exception {
        OpenFace.of(Demo.copyInto(folder), "W1");
    }

    @AfterEach
    void closeTheDemo() {
        OpenFace.closeAll();
    }

    @Test
    void editorComesBackOnItsElementAndOpensItsProjectFirst() {
        XMLMemento kept = keptByThePlatform();
        OpenFace.closeAll();

        IAdaptable input = again(kept);

        assertEquals("W1", input.getAdapter(Wall.class).getMark());
        assertEquals(List.of(folder.resolve("clinic.coursewright")),
                PlatformUI.getWorkbench().getService(OpenProjects.class).sessions().stream()
                        .map(session -> session.file()).toList());
    }

    @Test
    void editorOfAnElementThatIsGoneStaysAway() {
        XMLMemento kept = keptByThePlatform();
        kept.putString("element", "_gone");
        assertNull(again(kept));

        kept.putString("file", folder.resolve("gone.coursewright").toString());
        assertNull(again(kept));
    }

    @Test
    void outlineShowsThePartsOfTheWallAndSelectsThem() throws Exception {
        ContentOutline outline = (ContentOutline) OpenFace.page().showView("org.coursewright.workbench.outline");
        OpenFace.settle();
        Tree tree = (Tree) outline.getCurrentPage().getControl();
        TreeItem wall = tree.getItem(0);
        assertEquals("Wall W1", wall.getText());
        assertTrue(Arrays.stream(wall.getItems()).map(TreeItem::getText).toList().contains("Door D1"));

        select(Arrays.stream(wall.getItems()).filter(item -> item.getText().equals("Door D1")).findFirst()
                .orElseThrow());
        IStructuredSelection selection = (IStructuredSelection) OpenFace.page().getSelection();
        assertEquals("D1", ((Opening) (EObject) selection.getFirstElement()).getMark());
    }

    private static void select(TreeItem item) {
        item.getParent().setFocus();
        item.getParent().setSelection(item);
        Event event = new Event();
        event.item = item;
        item.getParent().notifyListeners(SWT.Selection, event);
        OpenFace.settle();
    }

    private static XMLMemento keptByThePlatform() {
        IPersistableElement persistable = OpenFace.page().getActiveEditor().getEditorInput().getPersistable();
        XMLMemento memento = XMLMemento.createWriteRoot("input");
        memento.putString("factory", persistable.getFactoryId());
        persistable.saveState(memento);
        return memento;
    }

    private static IAdaptable again(XMLMemento memento) {
        return PlatformUI.getWorkbench().getElementFactory(memento.getString("factory")).createElement(memento);
    }
}
