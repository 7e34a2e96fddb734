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
import org.coursewright.layout.ui.strip.AdviceStrip;
import org.coursewright.layout.ui.strip.StripContent;
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
    /** When somebody begins to wait; what the engine takes of it has a harness of its own. */
    private static final Duration AIM = Duration.ofMillis(200);
    private static final Timings TIMINGS = Timings.in("wall-face-drag.txt");

    @TempDir
    private Path folder;
    private final AtomicInteger painted = new AtomicInteger();
    private OpenFace face;

    private void open(Path file, String mark) throws Exception {
        face = OpenFace.of(file, mark);
        OpenFace.await(() -> face.wallPart().face().pieces() == face.laid().count().total());
        face.viewer().getControl().addListener(SWT.Paint, event -> painted.incrementAndGet());
    }

    @AfterEach
    void closeTheWall() {
        OpenFace.closeAll();
    }

    @Test
    void moveInAWallOf20000UnitsIsPaintedSoon() throws Exception {
        open(LargeWall.withAWindow(folder), LargeWall.MARK);
        TIMINGS.note(AIM, "drag in a wall of 20,000 units, until painted", moves());
        stages("20,000 units");
    }

    @Test
    void moveInTheDemoIsPaintedSoon() throws Exception {
        open(Demo.copyInto(folder), "W1");
        TIMINGS.note(AIM, "drag in wall W1 of the demo, until painted", moves());
        stages("W1 of the demo");
    }

    private long[] moves() {
        MouseOnOpening held = MouseOnOpening.inTheMiddle(face, opening());
        held.drag(1);
        OpenFace.await(DragTimesTest::isLookedAt);
        long[] taken = new long[MOVES];
        int by = 1;
        for (int i = 0; i < MOVES; i++) {
            OpenFace.await(() -> held.shownOffset().equals(wanted()));
            Length before = wanted();
            int paints = painted.get();
            long begin = System.nanoTime();
            while (wanted().equals(before)) {
                by++;
                begin = System.nanoTime();
                held.move(by);
            }
            OpenFace.await(() -> held.shownOffset().equals(wanted()));
            int then = painted.get();
            OpenFace.await(() -> painted.get() > Math.max(paints, then - 1));
            taken[i] = System.nanoTime() - begin;
        }
        held.give();
        return taken;
    }

    /** Whether the strip under the wall has nothing more to find. */
    private static boolean isLookedAt() {
        return Screen.all(AdviceStrip.class).findFirst().flatMap(AdviceStrip::content).flatMap(StripContent::cuts)
                .filter(cuts -> !cuts.goesOn()).isPresent();
    }

    /** Where the opening is dragged to, or drawn to by a place with few cuts. */
    private static Length wanted() {
        return Screen.all(AdviceStrip.class).findFirst().flatMap(AdviceStrip::content).flatMap(StripContent::at)
                .map(OpeningPlace::offset).orElseThrow();
    }

    private Opening opening() {
        return face.wall().getOpenings().get(0);
    }

    private void stages(String where) throws Exception {
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
