package org.coursewright.layout.ui.tests;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;

import org.coursewright.diagram.ui.scale.DiagramScale;
import org.coursewright.layout.ui.face.FaceDrawing;
import org.coursewright.layout.ui.part.OpeningPlace;
import org.coursewright.layout.ui.trial.DragTrial;
import org.coursewright.measure.Length;
import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Scrolls, zooms and drags a wall of more than 20,000 units in its editor and measures each frame until it has been drawn. The
 * limits are ten times the aims, for the machine may be busy with other things; what was measured is left in
 * target/wall-face-frames.txt.
 */
class LargeWallFramesTest {

    private static final int FRAMES = 60;
    private static final int DRAGS = 40;
    /** Thirty frames a second. */
    private static final Duration AIM = Duration.ofMillis(33);
    /** What the engine takes for a first answer is no matter of the window; this is when somebody begins to wait. */
    private static final Duration AIM_DRAG = Duration.ofMillis(200);
    private static final int TOLERATED = 10;
    private static final Path FIGURES = Path.of("target", "wall-face-frames.txt");

    @TempDir
    private Path folder;
    private final AtomicInteger painted = new AtomicInteger();
    private OpenFace face;

    private void open(Path file, String mark) throws Exception {
        face = OpenFace.of(file, mark);
        OpenFace.await(() -> face.wallPart().face().pieces() == face.laid().count().total());
    }

    @AfterEach
    void closeTheWall() {
        OpenFace.closeAll();
    }

    @Test
    void scrollingAndZoomingKeepUpWithTheEye() throws Exception {
        open(LargeWall.withAWindow(folder), LargeWall.MARK);
        assertTrue(face.laid().count().total() > 20_000);
        FigureCanvas canvas = (FigureCanvas) face.viewer().getControl();
        canvas.addListener(SWT.Paint, event -> painted.incrementAndGet());
        DiagramScale.zoom(face.viewer()).setZoom(0.5);
        OpenFace.settle();
        note(AIM, "scroll sideways", frames(frame -> canvas.scrollToX(20 * frame)));
        note(AIM, "scroll up and down", frames(frame -> canvas.scrollToY(20 * frame)));
        note(AIM, "zoom", frames(frame -> DiagramScale.zoom(face.viewer()).setZoom(0.05 + 0.01 * frame)));
    }

    @Test
    void answerToADragComesSoon() throws Exception {
        open(LargeWall.withAWindow(folder), LargeWall.MARK);
        note(AIM_DRAG, "drag in a wall of 20,000 units, first answer", answers());
    }

    @Test
    void answerToADragInTheDemoComesSoonToo() throws Exception {
        open(Demo.copyInto(folder), "W1");
        note(AIM_DRAG, "drag in wall W1 of the demo, first answer", answers());
    }

    private long[] answers() {
        long[] taken = new long[DRAGS];
        AtomicBoolean answered = new AtomicBoolean();
        Display display = Display.getCurrent();
        DragTrial trial = new DragTrial(face.wall().getOpenings().get(0), face.layout(), display::asyncExec,
                tried -> {
                    FaceDrawing.of(face.wall(), tried.outcome());
                    answered.set(true);
                });
        OpeningPlace start = OpeningPlace.of(face.wall().getOpenings().get(0));
        for (int i = 0; i < DRAGS; i++) {
            answered.set(false);
            long begin = System.nanoTime();
            trial.ask(new OpeningPlace(start.offset().plus(Length.ofMillimetres(5L * (i + 1))), start.width()));
            OpenFace.await(answered::get);
            taken[i] = System.nanoTime() - begin;
        }
        trial.end();
        return taken;
    }

    private long[] frames(IntConsumer change) {
        long[] taken = new long[FRAMES];
        for (int i = 0; i < FRAMES; i++) {
            long begin = System.nanoTime();
            int before = painted.get();
            change.accept(i + 1);
            OpenFace.await(() -> painted.get() > before);
            taken[i] = System.nanoTime() - begin;
        }
        return taken;
    }

    private static void note(Duration aim, String what, long[] taken) throws Exception {
        long[] sorted = taken.clone();
        Arrays.sort(sorted);
        double median = sorted[sorted.length / 2] / 1e6;
        double late = sorted[sorted.length * 95 / 100] / 1e6;
        List<String> lines = new ArrayList<>(Files.exists(FIGURES)
                ? Files.readAllLines(FIGURES)
                : List.of());
        lines.removeIf(line -> line.startsWith(what + ": "));
        lines.add(
                String.format(Locale.ENGLISH, "%s: median %.1f ms, 95 %% within %.1f ms, %d times", what, median, late,
                        taken.length));
        Files.write(FIGURES, lines);
        assertTrue(late < aim.multipliedBy(TOLERATED).toMillis(), lines::toString);
    }
}
