package org.coursewright.layout.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import org.coursewright.layout.ui.plan.part.DimensionPart;
import org.coursewright.layout.ui.plan.part.PlanPart;
import org.eclipse.gef.EditPart;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.junit.jupiter.api.Test;

/** The plan without a mouse: from element to element, out of it, and through its menu. */
class PlanKeyboardTest extends OnDemoPlan {

    /** Asks as the toolkit does before Tab would leave the plan; tells whether it does. */
    private boolean leavesWithTab(int detail) {
        Event tab = new Event();
        tab.detail = detail;
        tab.doit = true;
        plan.viewer().getControl().notifyListeners(SWT.Traverse, tab);
        OpenPlan.settle();
        return tab.doit;
    }

    private static String words(EditPart part) {
        return part instanceof PlanPart<?> element ? element.words() : ((DimensionPart) part).words();
    }

    @Test
    void tabGoesThroughAllElementsAndOut() {
        plan.viewer().deselectAll();
        Set<Object> reached = new HashSet<>();
        while (!leavesWithTab(SWT.TRAVERSE_TAB_NEXT)) {
            EditPart part = (EditPart) plan.viewer().getSelectedEditParts().get(0);
            assertTrue(reached.add(part), () -> words(part) + " is reached twice");
            assertTrue(plan.says(words(part)), () -> words(part) + " is not said");
        }

        assertTrue(plan.viewer().getSelectedEditParts().isEmpty());
        assertTrue(reached.size() >= 26, () -> reached.size() + " elements reached");
    }

    @Test
    void shiftTabGoesBackAndOut() {
        plan.viewer().deselectAll();
        leavesWithTab(SWT.TRAVERSE_TAB_NEXT);
        Object first = plan.viewer().getSelectedEditParts().get(0);
        leavesWithTab(SWT.TRAVERSE_TAB_NEXT);

        assertFalse(leavesWithTab(SWT.TRAVERSE_TAB_PREVIOUS));
        assertEquals(List.of(first), plan.viewer().getSelectedEditParts());
        assertTrue(leavesWithTab(SWT.TRAVERSE_TAB_PREVIOUS));
    }

    @Test
    void tabLeavesWhileAWallIsDrawn() {
        plan.key('w', 'w', 0);

        assertTrue(leavesWithTab(SWT.TRAVERSE_TAB_NEXT));
        assertTrue(plan.viewer().getSelectedEditParts().isEmpty());
    }

    @Test
    void escapeDeselects() {
        select(plan.wall("S2"));

        plan.key(SWT.ESC, SWT.ESC, 0);

        assertTrue(plan.viewer().getSelectedEditParts().isEmpty());
    }

    /** The menu is shown for one wall first, which leaves nothing to align; its items must not stay as they were then. */
    @Test
    void menuOffersAlignmentOnceTwoWallsAreSelected() {
        select(plan.wall("P3"));
        assertFalse(offered("Align Middles"));
        assertTrue(offered("Copy Walls"));

        select(plan.wall("P3"), plan.wall("P5"));
        assertTrue(offered("Align Middles"));

        plan.viewer().deselectAll();
        assertFalse(offered("Copy Walls"));
    }

    private boolean offered(String text) {
        Menu menu = plan.viewer().getControl().getMenu();
        menu.notifyListeners(SWT.Show, new Event());
        boolean enabled = Stream.of(menu.getItems()).filter(item -> item.getText().replace("&", "").startsWith(text))
                .findFirst().map(MenuItem::isEnabled).orElseThrow();
        menu.notifyListeners(SWT.Hide, new Event());
        OpenPlan.settle();
        return enabled;
    }
}
