package org.coursewright.layout.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;

import org.coursewright.core.session.ProjectSession;
import org.coursewright.core.session.ProjectStore;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Opening;
import org.eclipse.draw2d.PositionConstants;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.RequestConstants;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.requests.ChangeBoundsRequest;
import org.eclipse.swt.SWT;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Edits in the face of a wall, from the navigator to the file. */
class WallFaceEditsTest {

    private static final Length STEP = Length.ofInchFraction(1, 4);

    @TempDir
    private Path folder;
    private Path file;
    private OpenFace face;

    @BeforeEach
    void openTheWall() throws Exception {
        file = SmallHouse.in(folder);
        face = OpenFace.of(file, "W1");
        OpenFace.await(() -> face.wallPart().face().pieces() > 0);
    }

    @AfterEach
    void closeTheWall() {
        OpenFace.closeAll();
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
    void shiftWithAnArrowMovesTheFarJambAndAltTheNearOne() {
        Opening window = face.opening("N1");
        Length start = window.getOffset();
        Length width = window.getWidth();
        face.viewer().select(face.part(window));

        Screen.key(face.viewer().getControl(), SWT.ARROW_RIGHT, SWT.SHIFT);
        assertEquals(start, window.getOffset());
        assertEquals(width.plus(STEP), window.getWidth());

        Screen.key(face.viewer().getControl(), SWT.ARROW_LEFT, SWT.ALT);
        assertEquals(start.minus(STEP), window.getOffset());
        assertEquals(width.plus(STEP.times(2)), window.getWidth());
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
