package org.coursewright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import org.eclipse.swt.widgets.Link;
import org.eclipse.ui.IWorkbenchPage;
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
        Link link = Widgets.find(new Window().shell(), Link.class);

        assertEquals("<a>Open a project\u2026</a>", link.getText());
    }
}
