package org.coursewright.layout.ui.tests;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.BondSolver;
import org.coursewright.core.bond.BondTranslator;
import org.coursewright.core.bond.LayoutOutcome;
import org.coursewright.core.trial.OpeningTrial;
import org.coursewright.layout.ui.face.FaceDrawing;
import org.coursewright.layout.ui.part.OpeningPlace;
import org.coursewright.measure.Length;
import org.coursewright.measure.Progress;
import org.coursewright.model.building.Opening;
import org.coursewright.model.project.Project;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.swt.SWT;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Drags an opening with the mouse and measures each move until the wall, laid anew, has been painted; and where that time
 * goes. What was measured is left in target/wall-face-drag.txt.
 */
class DragTimesTest {

    private static final int MOVES = 40;
    private static final int MOVES_OF_A_HAND = 200;
    /** Between two events of a mouse. */
    private static final Duration PAUSE = Duration.ofMillis(16);
    /** When somebody begins to wait; what the engine takes of it has a harness of its own. */
    private static final Duration AIM = Duration.ofMillis(200);
    private static final Timings TIMINGS = Timings.in("wall-face-drag.txt");

    @TempDir
    private Path folder;
    private final AtomicInteger painted = new AtomicInteger();
    private OpenFace face;

    @AfterEach
    void closeTheWall() {
        OpenFace.closeAll();
    }

    @Test
    void moveInAWallOf20000UnitsIsPaintedSoon() throws Exception {
        face = OpenFace.laidOf(LargeWall.withAWindow(folder), LargeWall.MARK);
        TimedDrag drag = drag("a wall of 20,000 units");
        TIMINGS.note(AIM, "drag in a wall of 20,000 units further on, until painted", drag.onwards(MOVES));
        drag.give();
        stages("20,000 units");
    }

    @Test
    void moveInTheDemoIsPaintedSoon() throws Exception {
        face = OpenFace.laidOf(Demo.copyInto(folder), "W1");
        drag("wall W1 of the demo").give();
        stages("W1 of the demo");
    }

    private TimedDrag drag(String where) throws Exception {
        TimedDrag drag = TimedDrag.of(face, opening());
        TIMINGS.note(AIM, "drag in " + where + ", until painted", drag.onwards(MOVES));
        TIMINGS.note(AIM, "drag in " + where + " as a hand does, until painted",
                drag.asAHandDoes(MOVES_OF_A_HAND, PAUSE));
        return drag;
    }

    private Opening opening() {
        return face.wall().getOpenings().get(0);
    }

    private void stages(String where) throws Exception {
        face.viewer().getControl().addListener(SWT.Paint, event -> painted.incrementAndGet());
        OpeningTrial trial = new OpeningTrial(opening(), face.layout());
        BondSolver solver = BondSolver.remembering();
        Project project = (Project) EcoreUtil.getRootContainer(opening());
        OpeningPlace start = OpeningPlace.of(opening());
        Map<String, List<Long>> taken = new LinkedHashMap<>();
        for (int i = 0; i < MOVES; i++) {
            Length offset = start.offset().plus(Length.ofMillimetres(5L * (i + 1)));
            LayoutOutcome outcome = timed(taken, "trial in all",
                    () -> trial.first(offset, start.width(), Progress.NONE));
            BondRequest request = outcome.request();
            timed(taken, "of it the engine", () -> solver.first(request, Progress.NONE));
            timed(taken, "of it reading the project", () -> BondTranslator.translate(project));
            timed(taken, "drawing read", () -> FaceDrawing.of(face.wall(), outcome));
            timed(taken, "whole canvas painted", this::paint);
        }
        for (Map.Entry<String, List<Long>> each : taken.entrySet()) {
            TIMINGS.note(where + ", " + each.getKey(), each.getValue().stream().mapToLong(Long::longValue).toArray());
        }
    }

    private int paint() {
        int paints = painted.get();
        face.viewer().getControl().redraw();
        OpenFace.await(() -> painted.get() > paints);
        return painted.get();
    }

    private static <T> T timed(Map<String, List<Long>> taken, String what, Supplier<T> work) {
        long begin = System.nanoTime();
        T done = work.get();
        taken.computeIfAbsent(what, each -> new ArrayList<>()).add(System.nanoTime() - begin);
        return done;
    }
}
