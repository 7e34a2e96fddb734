package org.coursewright.layout.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.coursewright.core.geometry.Place;
import org.coursewright.diagram.ui.scale.DiagramScale;
import org.coursewright.layout.ui.plan.part.GripRequest;
import org.coursewright.layout.ui.plan.part.PlanPart;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.swt.SWT;
import org.junit.jupiter.api.Test;

/** Walls and openings of a plan are moved with the mouse and with arrows. */
class PlanDragTest extends OnDemoPlan {

    /** At this zoom a pixel is 5 mm. */
    private static final double CLOSE = 0.4;
    private static final Length MODULE = Length.ofInchFraction(29, 4);

    @Test
    void draggedWindowStopsWhereUnitsEnd() throws Exception {
        Opening window = plan.opening("N2");
        Length before = window.getOffset();
        DiagramScale.zoom(plan.viewer()).setZoom(CLOSE);
        plan.viewer().reveal(plan.part(window));
        OpenPlan.settle();
        Point middle = plan.pixel(plan.part(window).wall().orElseThrow().at(
                before.plus(Length.ofUnits(window.getWidth().units() / 2)), Length.ZERO));

        plan.drag(middle, 10, 1, 0);
        assertEquals(Length.ofInchFraction(1013, 4), window.getOffset(), "1 1/4 in further, as the demo's notes say");

        OpenPlan.command("org.eclipse.ui.edit.undo");
        assertEquals(before, window.getOffset());
    }

    @Test
    void draggedJambKeepsTheOtherInOneStep() {
        Opening window = plan.opening("N1");
        Length end = window.getOffset().plus(window.getWidth());
        GripRequest grip = new GripRequest(Place.START);
        grip.move(new Point(-40, 0), false, false);

        plan.part(window).showSourceFeedback(grip);
        history().execute(plan.part(window).getCommand(grip));
        plan.part(window).eraseSourceFeedback(grip);

        assertEquals(end, window.getOffset().plus(window.getWidth()));
        assertEquals(0, window.getOffset().plus(Length.ofInchFraction(1, 2)).units() % MODULE.units());
        history().undo();
        assertEquals(end, window.getOffset().plus(window.getWidth()));
    }

    @Test
    void draggedWallTakesAlongWhatEndsAtIt() {
        Wall partition = plan.wall("P1");
        Length before = partition.getFromX();
        Length along = plan.wall("P3").getToX();
        Point at = plan.pixel(plan.part(partition).shape().orElseThrow().at(Length.ofInches(200), Length.ZERO));

        plan.drag(at, 15, 3, 0);

        Length by = partition.getFromX().minus(before);
        assertTrue(by.signum() > 0);
        assertEquals(0, by.units() % MODULE.units());
        assertEquals(before.plus(by), partition.getToX());
        assertEquals(along.plus(by), plan.wall("P3").getToX());
        assertEquals(partition.getFromX(), plan.wall("P4").getFromX());
        history().undo();
        assertEquals(before, partition.getFromX());
        assertEquals(along, plan.wall("P3").getToX());
    }

    @Test
    void endInTheOpenIsDraggedByItsGrip() {
        Wall screen = plan.wall("C1");
        select(screen);
        Length before = screen.getToX();

        plan.drag(plan.pixel(plan.part(screen).shape().orElseThrow().to()), 50, 0, 0);

        assertTrue(screen.getToX().isGreaterThan(before));
        assertEquals(screen.getFromY(), screen.getToY());
    }

    @Test
    void arrowsMoveByTheModuleAndWithShiftByTheFineStep() {
        Opening door = plan.opening("D1");
        Length before = door.getOffset();
        select(door);

        plan.key(SWT.ARROW_RIGHT, (char) 0, 0);
        assertEquals(before.plus(MODULE), door.getOffset());
        plan.key(SWT.ARROW_LEFT, (char) 0, SWT.SHIFT);
        assertEquals(before.plus(MODULE).minus(Length.ofInchFraction(1, 4)), door.getOffset());

        Wall partition = plan.wall("P4");
        Length north = partition.getFromY();
        select(partition);
        plan.key(SWT.ARROW_UP, (char) 0, 0);
        assertEquals(north.plus(MODULE), partition.getFromY());
    }

    @Test
    void moveThatLeavesNoRoomForADoorIsRefusedInWords() {
        Wall partition = plan.wall("P1");
        Length before = partition.getFromX();
        select(partition);
        for (int i = 0; i < 5; i++) {
            plan.key(SWT.ARROW_RIGHT, (char) 0, 0);
        }

        assertEquals(before.plus(MODULE.times(4)), partition.getFromX());
        assertEquals(Length.ZERO, plan.opening("D5").getOffset());
        assertTrue(plan.says("The Offset of Door D5 cannot be -7 1/4\""));
    }

    @Test
    void frameSelectsWhatLiesInIt() {
        var area = plan.viewer().getControl().getSize();

        plan.drag(new Point(4, 4), area.x - 8, area.y - 8, 0);

        long elements = plan.storeyPart().childParts().stream().filter(PlanPart.class::isInstance)
                .filter(plan.viewer().getSelectedEditParts()::contains).count();
        assertEquals(26, elements);
        assertTrue(plan.says(" elements selected"));
    }
}
