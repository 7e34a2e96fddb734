package org.coursewright.layout.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.coursewright.bond.Pin;
import org.coursewright.core.bond.WallHanding;
import org.coursewright.core.session.ProjectSession;
import org.coursewright.diagram.ui.scale.DiagramScale;
import org.coursewright.layout.ui.face.FaceDrawing;
import org.coursewright.layout.ui.face.PlacedPiece;
import org.coursewright.layout.ui.paint.FacePlace;
import org.coursewright.measure.Length;
import org.coursewright.model.building.GaugePin;
import org.coursewright.model.building.PiecePin;
import org.eclipse.swt.widgets.Control;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pieces, joints and corners are pinned by the keys of the wall face; the layout keeps what is pinned. */
class PinningTest {

    @TempDir
    private Path folder;
    private OpenFace face;

    @BeforeEach
    void openTheWall() throws Exception {
        face = OpenFace.of(SmallHouse.in(folder), "W1");
        OpenFace.await(() -> face.wallPart().face().drawing().isPresent());
    }

    @AfterEach
    void closeTheWall() {
        OpenFace.closeAll();
    }

    private Control canvas() {
        return face.viewer().getControl();
    }

    private void key(char key) {
        Screen.key(canvas(), key);
    }

    /** Clicks on the third piece of a course. */
    private PlacedPiece click(int course) {
        FaceDrawing drawing = face.laid();
        OpenFace.await(() -> face.wallPart().face().drawing().filter(drawing::equals).isPresent());
        PlacedPiece piece = drawing.course(course).orElseThrow().pieces().get(2);
        FacePlace place = FacePlace.of(DiagramScale.of(face.viewer()), drawing.top().highest(), canvas().getSize().y);
        Length middle = Length.ofUnits((piece.from().units() + piece.to().units()) / 2);
        int y = (place.y(drawing.course(course).orElseThrow().top()) + place.y(drawing.course(course).orElseThrow()
                .unitBottom())) / 2;
        Screen.click(canvas(), place.x(middle), y);
        return piece;
    }

    @Test
    void pinnedPieceIsKeptAndPointedOutUntilItIsLeftToTheLayout() {
        PlacedPiece piece = click(2);
        key('p');

        assertEquals(List.of(piece.piece().length()), face.wall().getPins().stream()
                .map(pin -> ((PiecePin) pin).getLength()).toList());
        assertTrue(face.laid().face().pins().get(0) instanceof Pin.OfPiece);

        click(2);
        key('u');
        assertTrue(face.wall().getPins().isEmpty());

        OpenFace.active().ifPresent(ProjectSession::undo);
        assertEquals(1, face.wall().getPins().size());
    }

    @Test
    void jointsAreFixedAsTyped() {
        click(1);
        Screen.typeIntoNextDialog("1/2 in");
        key('j');

        assertEquals(SmallHouse.inches("1/2"), ((GaugePin) face.wall().getPins().get(0)).getJoint());
        assertEquals(1, face.wall().getPins().get(0).getCourse());
        assertTrue(face.laid().layout().unfillable().isEmpty());
    }

    @Test
    void jointThatFillsNothingIsSaidToLeaveTheRunOpen() {
        click(1);
        Screen.typeIntoNextDialog("2 in");
        key('j');

        assertEquals(1, face.laid().layout().unfillable().size());
        OpenFace.await(() -> Screen.labels().stream().anyMatch(text -> text.contains("Runs that nothing fills: 1")));
    }

    @Test
    void cornerIsPinnedToOneWallThenToTheOtherThenLeftToTheLayout() {
        WallHanding before = corner();
        assertFalse(before.isPinned());

        key(']');
        assertTrue(corner().isPinned());
        assertEquals(before.rivals().get(0), corner().throughOnOdd());

        key(']');
        assertEquals(before.rivals().get(1), corner().throughOnOdd());

        key(']');
        assertFalse(corner().isPinned());
    }

    /** The corner at the end of the wall, once the building has been laid as it is now. */
    private WallHanding corner() {
        FaceDrawing drawing = face.laid();
        OpenFace.await(() -> face.wallPart().face().drawing().filter(drawing::equals).isPresent());
        return drawing.corners().end().orElseThrow();
    }

    @Test
    void wallsRoundTheCornersAreUnfoldedBesideTheWall() {
        Screen.press("Round Corners");

        assertEquals(List.of("W2", "W3"), marks());
        FaceDrawing third = face.wallPart().beside().get(1).link().drawing();
        assertEquals(SmallHouse.inches("149 1/2"), third.face().length());
        assertTrue(third.corners().start().isPresent(), "it is turned: its end is drawn on the left");
        assertTrue(third.corners().end().isEmpty());

        Screen.press("Round Corners");
        assertTrue(marks().isEmpty());
    }

    private List<String> marks() {
        return face.wallPart().beside().stream().map(figure -> figure.link().wall().getMark()).toList();
    }
}
