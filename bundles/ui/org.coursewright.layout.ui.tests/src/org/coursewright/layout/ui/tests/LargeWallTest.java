package org.coursewright.layout.ui.tests;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.coursewright.core.bond.LayoutOutcome;
import org.coursewright.core.check.ProjectResults;
import org.coursewright.core.session.ProjectSession;
import org.coursewright.diagram.ui.ink.Ink;
import org.coursewright.diagram.ui.scale.DiagramScale;
import org.coursewright.layout.ui.face.FaceDrawing;
import org.coursewright.layout.ui.paint.FaceInk;
import org.coursewright.layout.ui.paint.FacePainter;
import org.coursewright.layout.ui.paint.FacePlace;
import org.coursewright.measure.LengthFormat;
import org.eclipse.draw2d.SWTGraphics;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Display;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A wall of 20,000 units is drawn without waiting. The limits are ten times the aim, for the machine may be busy with other
 * things; what was measured is left in target/wall-face-times.csv.
 */
class LargeWallTest {

    private static final Duration MOST = Duration.ofSeconds(2);
    private static final int REPAINTS = 20;
    private static final Rectangle WINDOW = new Rectangle(0, 0, 1300, 850);

    @TempDir
    private Path folder;
    private final List<String> times = new ArrayList<>(List.of("what,milliseconds"));

    @AfterEach
    void closeTheWall() {
        OpenFace.closeAll();
    }

    @Test
    void twentyThousandUnitsArePaintedWithoutWaiting() throws Exception {
        OpenFace face = OpenFace.laidOf(LargeWall.in(folder), LargeWall.MARK);
        assertTrue(face.laid().count().total() > 20_000);

        LayoutOutcome outcome = OpenFace.active().map(ProjectSession::derived)
                .flatMap(results -> results.state(ProjectResults.LAYOUT).value()).orElseThrow();
        long begin = System.nanoTime();
        FaceDrawing drawing = FaceDrawing.of(face.wall(), outcome).orElseThrow();
        note("reading the layout", System.nanoTime() - begin);
        DiagramScale whole = DiagramScale.fitting(drawing.top().highest(), WINDOW.height);
        paint(drawing, "whole wall", whole);
        paint(drawing, "zoom 0.25", new DiagramScale(0.25));
        paint(drawing, "zoom 1", new DiagramScale(1));
        Files.write(Path.of("target", "wall-face-times.csv"), times);
    }

    private void paint(FaceDrawing drawing, String what, DiagramScale scale) {
        FacePainter painter = new FacePainter(drawing, new FacePlace(scale, 0, WINDOW.height), FaceInk.with(Ink.LIGHT),
                LengthFormat.MILLIMETRES, drawing.courses().size());
        Image image = new Image(Display.getCurrent(), WINDOW.width, WINDOW.height);
        GC gc = new GC(image);
        SWTGraphics graphics = new SWTGraphics(gc);
        try {
            long[] taken = new long[REPAINTS];
            for (int i = 0; i < REPAINTS; i++) {
                long begin = System.nanoTime();
                painter.paint(graphics, WINDOW, Optional.empty());
                image.getImageData();
                taken[i] = System.nanoTime() - begin;
            }
            note(what + " first", taken[0]);
            Arrays.sort(taken);
            note(what + " median", taken[REPAINTS / 2]);
        } finally {
            graphics.dispose();
            gc.dispose();
            image.dispose();
        }
    }

    private void note(String what, long nanoseconds) {
        times.add(String.format(Locale.ENGLISH, "%s,%.1f", what, nanoseconds / 1e6));
        assertTrue(nanoseconds < MOST.toNanos(), () -> times.toString());
    }
}
