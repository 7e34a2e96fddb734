package org.coursewright.layout.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.coursewright.bond.CutReason;
import org.coursewright.bond.Piece;
import org.coursewright.core.session.ProjectSession;
import org.coursewright.core.session.ProjectStore;
import org.coursewright.diagram.ui.picture.PngFile;
import org.coursewright.layout.ui.face.FaceDrawing;
import org.coursewright.layout.ui.paint.FacePicture;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.coursewright.model.building.Opening;
import org.eclipse.draw2d.PositionConstants;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.RequestConstants;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.requests.ChangeBoundsRequest;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The face of a wall of the demo building, from the navigator to the file. */
class WallFaceTest {

    private static final Length STEP = Length.ofInchFraction(1, 4);

    @TempDir
    private Path folder;
    private Path file;
    private OpenFace face;

    @BeforeEach
    void openTheDemo() throws Exception {
        file = Demo.copyInto(folder);
        face = OpenFace.of(file, "W1");
        OpenFace.await(() -> face.wallPart().face().pieces() > 0);
    }

    @AfterEach
    void closeTheDemo() {
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
    void draggedOpeningStopsAtAQuarterOfAnInchAndComesBackByTheSharedHistory() throws Exception {
        Opening window = face.opening("N1");
        Length before = window.getOffset();
        MouseOnOpening held = MouseOnOpening.inTheMiddle(face, window);
        held.drag(23);
        held.give();
        Length after = window.getOffset();

        assertTrue(after.isGreaterThan(before));
        assertEquals(0, after.units() % STEP.units());
        assertTrue(face.editor().isDirty());
        assertEquals(face.laid().count().total(), face.wallPart().face().pieces(), "the wall is laid anew");

        OpenFace.command("org.eclipse.ui.edit.undo");
        assertEquals(before, window.getOffset());
        assertFalse(face.editor().isDirty());
        assertTrue(OpenFace.active().filter(ProjectSession::canRedo).isPresent());
    }

    @Test
    void draggedNearJambKeepsTheFarOneInOneStepOfTheHistory() {
        Opening window = face.opening("N1");
        Length before = window.getOffset();
        Length end = before.plus(window.getWidth());

        execute(window, drag(RequestConstants.REQ_RESIZE, 0, 31, PositionConstants.WEST));
        assertTrue(window.getOffset().isLessThan(before));
        assertEquals(end, window.getOffset().plus(window.getWidth()));

        OpenFace.active().ifPresent(ProjectSession::undo);
        assertEquals(before, window.getOffset());
        assertEquals(end, window.getOffset().plus(window.getWidth()));
    }

    @Test
    void openingStaysInItsWall() {
        Opening window = face.opening("N1");

        execute(window, drag(RequestConstants.REQ_MOVE, -100_000, 0, 0));

        assertEquals(Length.ZERO, window.getOffset());
    }

    @Test
    void savedDragIsInTheFile() throws Exception {
        Opening window = face.opening("N1");
        execute(window, drag(RequestConstants.REQ_MOVE, 23, 0, 0));

        OpenFace.command("org.eclipse.ui.file.save");

        assertFalse(face.editor().isDirty());
        Opening read = new ProjectStore().load(file).getBuilding().getStoreys().get(0).getWalls().get(0).getOpenings()
                .get(0);
        assertEquals(window.getOffset(), read.getOffset());
    }

    @Test
    void closedProjectClosesItsEditors() {
        OpenFace.closeAll();

        assertEquals(0, Arrays.stream(OpenFace.page().getEditorReferences())
                .filter(editor -> editor.getId().startsWith("org.coursewright.layout.ui")).count());
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
        OpenFace.await(() -> labels().stream().anyMatch(text -> text.startsWith("Wall W1:")));

        assertTrue(labels().containsAll(List.of("Whole unit", "Special", "Cut piece", "Lap too short")));
        long whole = face.laid().count().whole();
        assertTrue(labels().stream().anyMatch(text -> text.contains(String.format(Locale.ENGLISH, "%,d whole", whole))),
                labels()::toString);
    }

    private static long coloursIn(ImageData image) {
        return IntStream.range(0, image.width * image.height)
                .map(at -> image.getPixel(at % image.width, at / image.width)).distinct().count();
    }

    private List<String> labels() {
        return in(OpenFace.page().getWorkbenchWindow().getShell()).filter(Label.class::isInstance)
                .map(each -> ((Label) each).getText()).toList();
    }

    private static Stream<Control> in(Control root) {
        return root instanceof Composite composite
                ? Stream.concat(Stream.of(root), Stream.of(composite.getChildren()).flatMap(WallFaceTest::in))
                : Stream.of(root);
    }

    private ChangeBoundsRequest drag(String type, int move, int widen, int direction) {
        ChangeBoundsRequest request = new ChangeBoundsRequest(type);
        request.setMoveDelta(new Point(move, 0));
        request.setSizeDelta(new Dimension(widen, 0));
        request.setResizeDirection(direction);
        return request;
    }

    private void execute(Opening opening, ChangeBoundsRequest request) {
        request.setEditParts(face.part(opening));
        face.part(opening).showSourceFeedback(request);
        Command command = face.part(opening).getCommand(request);
        face.part(opening).eraseSourceFeedback(request);
        face.viewer().getEditDomain().getCommandStack().execute(command);
        OpenFace.settle();
    }
}
