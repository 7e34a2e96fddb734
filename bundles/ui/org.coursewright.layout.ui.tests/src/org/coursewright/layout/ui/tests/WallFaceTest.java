package org.coursewright.layout.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.IntStream;

import org.coursewright.bond.CutReason;
import org.coursewright.bond.Piece;
import org.coursewright.diagram.ui.picture.PngFile;
import org.coursewright.diagram.ui.scale.DiagramScale;
import org.coursewright.layout.ui.face.FaceDrawing;
import org.coursewright.layout.ui.paint.FacePicture;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the face of a wall of the demo building shows. */
class WallFaceTest {

    @TempDir
    private static Path folder;
    private static OpenFace face;

    /** No test here changes anything, so one demo that is laid once does for all. */
    @BeforeAll
    static void openTheDemo() throws Exception {
        face = OpenFace.of(Demo.copyInto(folder), "W1");
        OpenFace.await(() -> face.wallPart().face().pieces() > 0);
    }

    @AfterAll
    static void closeTheDemo() {
        OpenFace.closeAll();
    }

    @Test
    void figureShowsEveryPieceOfTheLayout() {
        assertEquals(face.laid().count().total(), face.wallPart().face().pieces());
        assertTrue(face.wallPart().face().pieces() > 500);
    }

    @Test
    void everyCutPieceHasAReason() {
        FaceDrawing drawing = face.laid();

        long explained = drawing.courses().stream().flatMap(course -> course.pieces().stream())
                .filter(piece -> piece.piece().kind() == Piece.Kind.CUT)
                .filter(piece -> drawing.cutReason(piece).isPresent()).count();
        assertEquals(drawing.count().cut(), explained);
        assertEquals(drawing.count().cut(), drawing.cutReasons().stream().mapToInt(CutReason::cuts).sum());
    }

    @Test
    void mouseOverACutPieceReadsWhyItIsCut() {
        FaceDrawing drawing = face.laid();
        Control canvas = face.viewer().getControl();
        Set<String> hints = new HashSet<>();
        for (int y = 0; y < canvas.getSize().y; y += 9) {
            for (int x = 0; x < canvas.getSize().x; x += 35) {
                canvas.notifyListeners(SWT.MouseMove, move(x, y));
                hints.add(String.valueOf(canvas.getToolTipText()));
            }
        }

        assertTrue(drawing.count().cut() > 0);
        assertTrue(hints.stream().anyMatch(hint -> hint.contains("Cut piece") && hint.contains("fewer cuts")),
                hints::toString);
        assertTrue(hints.stream().filter(hint -> hint.contains("Whole unit"))
                .noneMatch(hint -> hint.contains("fewer cuts")));
    }

    private static Event move(int x, int y) {
        Event event = new Event();
        event.x = x;
        event.y = y;
        return event;
    }

    @Test
    void piecesAndJointsFillEachRunToItsEnd() {
        face.laid().courses().stream().flatMap(course -> course.pieces().stream()).forEach(piece -> {
            assertFalse(piece.from().isLessThan(piece.run().from()));
            assertFalse(piece.to().isGreaterThan(piece.run().to()));
        });
    }

    @Test
    void exportedPictureShowsThePiecesInTheirColours() throws Exception {
        Path png = folder.resolve("face.png");
        FacePicture picture = new FacePicture(face.laid(), LengthFormat.INCHES);
        new PngFile(png).write(picture, Display.getCurrent());

        ImageData image = new ImageData(png.toString());
        assertEquals(picture.size(), new Dimension(image.width, image.height));
        assertTrue(coloursIn(image) > 5);
    }

    @Test
    void legendAndHeaderAreInWords() {
        OpenFace.await(() -> Screen.labels().stream().anyMatch(text -> text.startsWith("Wall W1:")));

        assertTrue(Screen.labels().containsAll(List.of("Whole unit", "Special", "Cut piece", "Lap too short")));
        long whole = face.laid().count().whole();
        assertTrue(
                Screen.labels().stream()
                        .anyMatch(text -> text.contains(String.format(Locale.ENGLISH, "%,d whole", whole))),
                Screen.labels()::toString);
    }

    @Test
    void jointGaugesEnlargeTheWallUntilTheyCanBeRead() {
        double fitted = DiagramScale.zoom(face.viewer()).getZoom();
        Length course = face.laid().courses().get(0).course().height();

        Screen.press("Joint Gauges");
        int line = FigureUtilities.getTextExtents("0", face.viewer().getControl().getFont()).height;
        assertTrue(DiagramScale.of(face.viewer()).toPixels(course) >= line);

        Screen.press("Joint Gauges");
        assertEquals(fitted, DiagramScale.zoom(face.viewer()).getZoom(), 1e-6);
    }

    private static long coloursIn(ImageData image) {
        return IntStream.range(0, image.width * image.height)
                .map(at -> image.getPixel(at % image.width, at / image.width)).distinct().count();
    }
}
