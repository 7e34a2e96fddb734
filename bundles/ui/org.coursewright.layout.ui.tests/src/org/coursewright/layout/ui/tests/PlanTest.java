package org.coursewright.layout.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.coursewright.diagram.ui.history.EditCommand;
import org.coursewright.layout.ui.plan.paint.OpeningPainting;
import org.coursewright.layout.ui.plan.paint.PaintedFigure;
import org.coursewright.layout.ui.plan.part.DimensionPart;
import org.coursewright.layout.ui.plan.part.PlanPart;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;
import org.coursewright.model.edit.command.MoveOpeningCommand;
import org.eclipse.gef.AccessibleEditPart;
import org.eclipse.gef.EditPart;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.junit.jupiter.api.Test;

/** What the plan of the demo building shows and says. */
class PlanTest extends OnDemoPlan {

    @Test
    void everyWallAndOpeningIsShown() {
        int openings = plan.storey().getWalls().stream().mapToInt(wall -> wall.getOpenings().size()).sum();
        long shown = plan.storeyPart().childParts().stream().filter(PlanPart.class::isInstance).count();

        assertEquals(14, plan.storey().getWalls().size());
        assertEquals(14 + openings, shown);
        assertTrue(plan.says("14 walls, 12 openings"));
    }

    @Test
    void dimensionsOutsideReadAsTheyWereTyped() {
        List<String> words = plan.dimensions().stream().map(DimensionPart::words).toList();

        assertTrue(words.contains("39'-10\" over all, Wall W1"), words::toString);
        assertTrue(words.contains("5'-4 3/4\" to the near jamb of Window N1 along Wall W1"), words::toString);
        assertTrue(words.contains("3'-8\" between the jambs of Door D1"), words::toString);
    }

    @Test
    void wallInsideIsMeasuredWhileItIsSelected() {
        Wall partition = plan.wall("P4");
        assertTrue(plan.dimensions().stream().noneMatch(part -> part.dimension().orElseThrow().wall() == partition));

        select(partition);

        assertTrue(plan.dimensions().stream().anyMatch(part -> part.dimension().orElseThrow().wall() == partition));
        assertTrue(plan.says("Wall P4: "));
    }

    @Test
    void findingsAreMarkedOnTheirElements() {
        Opening door = plan.opening("D1");
        Opening window = plan.opening("N2");

        history().execute(new EditCommand(new MoveOpeningCommand(door, window.getOffset())));
        OpenPlan.await(() -> isMarked(door) || isMarked(window));

        assertTrue(new Hint(plan.part(isMarked(door) ? door : window)).text().lines().count() > 1);
        assertFalse(isMarked(plan.opening("D4")));
    }

    private boolean isMarked(Opening opening) {
        return ((OpeningPainting) ((PaintedFigure) plan.part(opening).getFigure()).painting().orElseThrow()).trouble()
                .isPresent();
    }

    /** The hint that appears beside the mouse over a part. */
    private record Hint(PlanPart<?> part) {
        String text() {
            return ((org.eclipse.draw2d.Label) part.getFigure().getToolTip()).getText();
        }
    }

    @Test
    void everyPartHasAnAccessibleName() {
        for (EditPart part : plan.storeyPart().childParts()) {
            AccessibleEvent event = new AccessibleEvent(plan.viewer().getControl());
            event.childID = ACC.CHILDID_SELF;
            ((AccessibleEditPart) part.getAdapter(AccessibleEditPart.class)).getName(event);
            assertFalse(event.result == null || event.result.isBlank(), () -> part + " has no name");
        }
    }

    @Test
    void selectionInTheNavigatorIsShownInThePlan() throws Exception {
        OpenPlan.page().showView("org.coursewright.workbench.navigator").getSite().getSelectionProvider()
                .setSelection(new StructuredSelection(plan.wall("S2")));
        OpenPlan.settle();

        assertEquals(List.of(plan.part(plan.wall("S2"))), plan.viewer().getSelectedEditParts());
    }
}
