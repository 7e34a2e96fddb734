package org.coursewright.layout.ui.tests;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;

import org.coursewright.diagram.ui.scale.DiagramScale;
import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.swt.SWT;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Scrolls and zooms a wall of more than 20,000 units in its editor and measures each frame until it has been drawn. What was
 * measured is left in target/wall-face-frames.txt.
 */
class LargeWallFramesTest {

    private static final int FRAMES = 60;
    /** Thirty frames a second. */
    private static final Duration AIM = Duration.ofMillis(33);
    private static final Timings TIMINGS = Timings.in("wall-face-frames.txt");

    @TempDir
    private Path folder;
    private final AtomicInteger painted = new AtomicInteger();
    private OpenFace face;

    @AfterEach
    void closeTheWall() {
        OpenFace.closeAll();
    }

    @Test
    void scrollingAndZoomingKeepUpWithTheEye() throws Exception {
        face = OpenFace.laidOf(LargeWall.withAWindow(folder), LargeWall.MARK);
        assertTrue(face.laid().count().total() > 20_000);
        FigureCanvas canvas = (FigureCanvas) face.viewer().getControl();
        canvas.addListener(SWT.Paint, event -> painted.incrementAndGet());
        DiagramScale.zoom(face.viewer()).setZoom(0.5);
        OpenFace.settle();
        TIMINGS.note(AIM, "scroll sideways", frames(frame -> canvas.scrollToX(20 * frame)));
        TIMINGS.note(AIM, "scroll up and down", frames(frame -> canvas.scrollToY(20 * frame)));
        TIMINGS.note(AIM, "zoom", frames(frame -> DiagramScale.zoom(face.viewer()).setZoom(0.05 + 0.01 * frame)));
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
}
