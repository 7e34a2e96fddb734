package org.coursewright.estimate.ui.tests;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.BooleanSupplier;

import org.coursewright.core.check.ProjectResults;
import org.coursewright.core.cost.PriceResults;
import org.coursewright.core.derive.Derived;
import org.coursewright.core.derive.NodeState;
import org.coursewright.core.takeoff.TakeoffResults;
import org.coursewright.model.building.Storey;
import org.coursewright.model.building.Wall;
import org.coursewright.model.edit.command.RenameCommand;
import org.coursewright.workbench.OpenProjects;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * How long the window is away while the demo is opened, edited, saved and priced. Everything is done twice: what is done for
 * the first time loads its code. The figures are left in target/stalls.txt; the limit is ten times the aim, for the code may
 * not be compiled yet.
 */
class StallsTest {

    private static final Duration AIM = Duration.ofMillis(50);
    private static final int TOLERATED = 10;
    private static final int EDITS = 2;
    private static final String OPEN = "org.coursewright.workbench.openProject";
    private static final String OPEN_ELEMENT = "org.coursewright.workbench.openElement";
    private static final String SHOW = "org.coursewright.estimate.ui.open";
    private static final Path FIGURES = Path.of("target", "stalls.txt");

    @TempDir
    private Path folder;

    private final List<String> figures = new ArrayList<>();
    private final Turns turns = new Turns();

    /** What the window is asked to do. */
    @FunctionalInterface
    private interface Deed {
        void run() throws Exception;
    }

    @AfterEach
    void closeTheProject() {
        turns.close();
        Desk.closeAll();
    }

    @Test
    void windowIsNeverAwayForLong() throws Exception {
        round("first time", SmallClinic.wholeInto(folder.resolve("first")));
        Desk.closeAll();
        List<Duration> longest = round("again", SmallClinic.wholeInto(folder.resolve("again")));
        for (int i = 1; i <= EDITS; i++) {
            longest.addAll(edit("once more (" + i + ")", "D" + i));
        }
        Files.write(FIGURES, figures);
        assertTrue(longest.stream().allMatch(time -> time.compareTo(AIM.multipliedBy(TOLERATED)) < 0),
                figures::toString);
    }

    private List<Duration> round(String when, Path file) throws Exception {
        List<Duration> longest = new ArrayList<>();
        longest.add(step(when, "open the project", () -> Desk.order(OPEN, Map.of(OPEN + ".file", file.toString())),
                fresh(ProjectResults.CHECK)));
        longest.add(step(when, "select a storey", () -> select(storey()), () -> true));
        longest.add(step(when, "open its plan", () -> command(OPEN_ELEMENT), () -> true));
        longest.add(step(when, "select a wall", () -> select(storey().getWalls().get(0)), () -> true));
        longest.add(step(when, "open its face", () -> command(OPEN_ELEMENT), fresh(ProjectResults.LAYOUT)));
        longest.add(step(when, "open the take-off", () -> show("takeoff"), fresh(TakeoffResults.TAKEOFF)));
        longest.add(step(when, "open the price", () -> show("price"), fresh(PriceResults.RANGE)));
        longest.addAll(edit(when, "C9"));
        longest.add(step(when, "save", () -> command("org.eclipse.ui.file.save"), () -> true));
        return longest;
    }

    private List<Duration> edit(String when, String mark) {
        return List.of(step(when, "rename a wall", () -> Desk.execute(new RenameCommand(last(), mark)),
                fresh(PriceResults.RANGE)),
                step(when, "undo", () -> command("org.eclipse.ui.edit.undo"), fresh(PriceResults.RANGE)),
                step(when, "redo", () -> command("org.eclipse.ui.edit.redo"), fresh(PriceResults.RANGE)));
    }

    private Duration step(String when, String what, Deed deed, BooleanSupplier done) {
        Turns.Longest longest = turns.until(AIM, done, () -> {
            try {
                deed.run();
            } catch (Exception e) {
                throw new AssertionError(what, e);
            }
        });
        figures.add(String.format(Locale.ENGLISH,
                "%s, %s: %d turns over %d ms, the longest %d ms of the processor (%d ms on the clock) %s", what, when,
                longest.over(), AIM.toMillis(), longest.processor().toMillis(), longest.clock().toMillis(),
                longest.where()));
        return longest.processor();
    }

    private static BooleanSupplier fresh(Derived<?> result) {
        return () -> PlatformUI.getWorkbench().getService(OpenProjects.class).active().filter(session -> !(session
                .derived().state(result) instanceof NodeState.Stale)).isPresent();
    }

    private static Storey storey() {
        return Desk.project().getBuilding().getStoreys().get(0);
    }

    private static Wall last() {
        return storey().getWalls().get(storey().getWalls().size() - 1);
    }

    private static void select(EObject element) throws Exception {
        Desk.page().showView("org.coursewright.workbench.navigator").getSite().getSelectionProvider().setSelection(
                new StructuredSelection(element));
    }

    private static void show(String part) throws CommandException {
        Desk.order(SHOW, Map.of(SHOW + ".part", part));
    }

    private static void command(String id) throws CommandException {
        Desk.order(id, Map.of());
    }
}
