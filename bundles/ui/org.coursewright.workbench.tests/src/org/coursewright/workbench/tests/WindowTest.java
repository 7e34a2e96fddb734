package org.coursewright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.Test;

class WindowTest {

    @Test
    void opensInThePlanningPerspectiveWithTheNavigator() {
        IWorkbenchPage page = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();

        assertEquals("org.coursewright.workbench.planning", page.getPerspective().getId());
        assertNotNull(page.findView("org.coursewright.workbench.navigator"));
    }
}
