package org.coursewright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.WorkbenchException;
import org.junit.jupiter.api.Test;

class WindowTest {

    @Test
    void opensInThePlanningPerspectiveWithTheNavigator() {
        IWorkbenchPage page = new Window().page();

        assertEquals("org.coursewright.workbench.planning", page.getPerspective().getId());
        assertNotNull(page.findView("org.coursewright.workbench.navigator"));
    }

    @Test
    void navigatorWithoutProjectsOffersToOpenOne() {
        Control navigator = Widgets.find(new Window().shell(), Label.class,
                label -> label.getText().equals("No project is open.")).getParent();

        assertEquals("<a>Open a project\u2026</a>", Widgets.find(navigator, Link.class).getText());
    }

    @Test
    void editorsStayInSightInAnotherPerspectiveAndLeaveNoHoleWhenClosed() throws Exception {
        Window window = new Window();
        IWorkbenchPage page = window.page();
        try {
            window.choose("Help", "Welcome");
            assertTrue(page.isEditorAreaVisible());

            perspective("timing");
            assertTrue(page.isEditorAreaVisible());

            page.closeAllEditors(false);
            Widgets.settle();
            assertFalse(page.isEditorAreaVisible());
        } finally {
            perspective("planning");
            window.forgetEverything();
        }
    }

    private static void perspective(String name) throws WorkbenchException {
        PlatformUI.getWorkbench().showPerspective("org.coursewright.workbench." + name,
                PlatformUI.getWorkbench().getActiveWorkbenchWindow());
        Widgets.settle();
    }
}
