package org.coursewright.layout.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import java.util.stream.Collectors;

import org.coursewright.layout.ui.plan.action.AlignAction;
import org.coursewright.layout.ui.plan.action.CopyAction;
import org.coursewright.layout.ui.plan.action.MirrorAction;
import org.coursewright.layout.ui.plan.change.Alignment;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;
import org.eclipse.gef.ui.actions.ActionRegistry;
import org.eclipse.jface.action.IAction;
import org.junit.jupiter.api.Test;

/** Walls and openings of a plan are taken out, copied, mirrored and brought into line. */
class PlanArrangementTest extends OnDemoPlan {

    @Test
    void deletedWallTakesItsOpeningsAlongInOneStep() throws Exception {
        Wall partition = plan.wall("P5");
        select(partition, partition.getOpenings().get(0));

        OpenPlan.command("org.eclipse.ui.edit.delete");
        assertFalse(plan.storey().getWalls().contains(partition));
        OpenPlan.command("org.eclipse.ui.edit.undo");
        assertTrue(plan.storey().getWalls().contains(partition));
        assertEquals(1, partition.getOpenings().size());
    }

    @Test
    void severalThatAreDeletedAreOneStepNamedByTheFirst() throws Exception {
        select(plan.wall("C1"), plan.wall("C2"), plan.opening("V1"));

        OpenPlan.command("org.eclipse.ui.edit.delete");

        assertEquals("Remove Wall C1 and 2 more", history().getUndoCommand().getLabel());
        history().undo();
        assertEquals(14, plan.storey().getWalls().size());
    }

    @Test
    void copiesBearMarksOfTheirOwnAndAreSelected() {
        select(plan.wall("S1"), plan.wall("S2"));
        run(CopyAction.ID);

        assertEquals(16, plan.storey().getWalls().size());
        Set<String> marks = plan.storey().getWalls().stream().map(Wall::getMark).collect(Collectors.toSet());
        assertEquals(16, marks.size());
        assertEquals(2, plan.viewer().getSelectedEditParts().size());
        assertTrue(plan.says("2 elements selected"));
        assertEquals("Add Wall S4 and Wall S5", history().getUndoCommand().getLabel());
        history().undo();
        assertEquals(14, plan.storey().getWalls().size());
    }

    @Test
    void mirroredWallsLieWhereTheirImagesWere() {
        Wall one = plan.wall("S1");
        Wall other = plan.wall("S3");
        Length left = one.getFromX();
        Length right = other.getFromX();
        select(one, other);

        run(MirrorAction.SIDEWAYS);

        assertEquals(right, one.getFromX());
        assertEquals(left, other.getFromX());
    }

    @Test
    void alignedWallIsInLineWithTheOneSelectedLast() {
        select(plan.wall("P3"), plan.wall("P5"));
        run(AlignAction.id(Alignment.Side.CENTRE));

        assertEquals(plan.wall("P5").getFromY(), plan.wall("P3").getFromY());
        assertEquals(plan.wall("P5").getFromY(), plan.wall("P3").getToY());
    }

    @Test
    void alignedOpeningIsOppositeTheOneSelectedLast() {
        select(plan.opening("D4"), plan.opening("N1"));
        run(AlignAction.id(Alignment.Side.CENTRE));

        Opening moved = plan.opening("D4");
        Opening model = plan.opening("N1");
        Length half = Length.ofUnits(moved.getWidth().units() / 2);
        assertEquals(plan.part(model).wall().orElseThrow().at(model.getOffset().plus(half), Length.ZERO).x(),
                plan.part(moved).wall().orElseThrow().at(moved.getOffset().plus(half), Length.ZERO).x());
    }

    private IAction action(String id) {
        return ((ActionRegistry) plan.editor().getAdapter(ActionRegistry.class)).getAction(id);
    }

    private void run(String id) {
        assertTrue(action(id).isEnabled());
        action(id).run();
        OpenPlan.settle();
    }
}
