package org.coursewright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
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
        Control navigator = Widgets.find(new Window().shell(), Label.class,
                label -> label.getText().equals("No project is open.")).getParent();

        assertEquals("<a>Open a project\u2026</a>", Widgets.find(navigator, Link.class).getText());
    }
}
