package org.coursewright.layout.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.coursewright.core.bond.WallHanding;
import org.coursewright.core.session.ProjectSession;
import org.coursewright.model.building.Junction;
import org.coursewright.model.building.WallPlace;
import org.eclipse.gef.ContextMenuProvider;
import org.eclipse.jface.action.ActionContributionItem;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IContributionItem;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.MenuManager;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which wall runs through at a corner is shown in the plan, and decided there by keys and by the menu. */
class PlanHandingTest {

    @TempDir
    private Path folder;
    private OpenPlan plan;

    @BeforeEach
    void openThePlan() throws Exception {
        plan = OpenPlan.of(SmallHouse.in(folder));
        plan.viewer().select(plan.part(plan.wall("W1")));
        OpenPlan.await(() -> plan.editor().state().laid().isPresent());
    }

    @AfterEach
    void closeThePlan() {
        OpenPlan.closeAll();
    }

    private static List<Junction> junctions() {
        return OpenPlan.project().getBuilding().getJunctions();
    }

    @Test
    void cornerIsDecidedByItsKeyAndTakenBackByTheSharedHistory() {
        plan.key(']', ']', 0);

        assertEquals(plan.wall("W1"), junctions().get(0).getThrough());
        OpenFace.active().ifPresent(ProjectSession::undo);
        assertTrue(junctions().isEmpty());
    }

    @Test
    void selectedWallSaysWhatRunsThroughAtItsCorners() {
        plan.key(']', ']', 0);

        OpenPlan.await(() -> plan.part(plan.wall("W1")).words().endsWith("; at the end odd courses: W1, pinned"));
    }

    @Test
    void endThatMeetsNothingHasNothingToDecide() {
        plan.key('[', '[', 0);

        assertTrue(junctions().isEmpty());
    }

    @Test
    void cornerIsDecidedByTheMenuAndShownAsDecided() {
        choose("W2 Runs Through in Odd Courses");

        assertEquals(plan.wall("W2"), junctions().get(0).getThrough());
        OpenPlan.await(() -> plan.editor().state().laid()
                .flatMap(laid -> WallHanding.at(laid, "W1", WallPlace.END)).filter(WallHanding::isPinned).isPresent());
        assertTrue(choice("W2 Runs Through in Odd Courses").isChecked());

        choose("Let the Layout Choose");
        assertNull(junctions().get(0).getThrough());
        assertFalse(junctions().get(0).getEnds().isEmpty());
    }

    private void choose(String text) {
        IAction choice = choice(text);
        choice.setChecked(true);
        choice.run();
        OpenPlan.settle();
    }

    /** What the menu offers for what is selected, filled anew as it is when it is shown. */
    private IAction choice(String text) {
        MenuManager filled = new MenuManager();
        ((ContextMenuProvider) plan.viewer().getContextMenu()).buildContextMenu(filled);
        return actions(filled).filter(action -> action.getText().replace("&", "").equals(text)).findFirst()
                .orElseThrow();
    }

    private static Stream<IAction> actions(IMenuManager menu) {
        return Stream.of(menu.getItems()).flatMap(PlanHandingTest::actions);
    }

    private static Stream<IAction> actions(IContributionItem item) {
        return item instanceof IMenuManager menu
                ? actions(menu)
                : Stream.of(item).filter(ActionContributionItem.class::isInstance)
                        .map(each -> ((ActionContributionItem) each).getAction());
    }
}
