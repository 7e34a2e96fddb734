package org.coursewright.layout.ui.tests;

import static org.coursewright.layout.ui.tests.OpenPlan.inches;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.coursewright.core.geometry.WallMeeting.Kind;
import org.coursewright.core.session.ProjectStore;
import org.coursewright.layout.ui.plan.shape.PlanMeeting;
import org.coursewright.layout.ui.plan.shape.PlanPoint;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.OpeningKind;
import org.coursewright.model.building.Storey;
import org.coursewright.model.building.Wall;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.editparts.LayerManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A room is drawn, gets a door, and is changed, saved and opened again, all with mouse and keys. */
class DrawRoomTest {

    /** Around what is on its way, for marks. */
    private static final int MARGIN = 10;

    @TempDir
    private Path folder;
    private Path file;
    private OpenPlan plan;

    @BeforeEach
    void openAnEmptyStorey() throws Exception {
        file = EmptyStorey.in(folder);
        plan = OpenPlan.of(file);
    }

    @AfterEach
    void close() {
        OpenPlan.closeAll();
    }

    /** Four clicks and one more on the first corner. */
    private void drawRoom() {
        plan.press("Wall");
        Point corner = new Point(220, 400);
        List.of(corner, corner.getTranslated(180, 1), corner.getTranslated(181, -140), corner.getTranslated(2, -141),
                corner).forEach(plan::click);
    }

    /** Words that say how long a wall is, drawn to the right edge of the paper. */
    @Test
    void readoutStaysOnThePaperThatIsSeen() {
        int width = plan.viewer().getControl().getSize().x;
        plan.press("Wall");
        plan.click(new Point(width - 200, 300));
        plan.move(new Point(width - 12, 300));

        IFigure layer = ((LayerManager) plan.viewer().getEditPartRegistry().get(LayerManager.ID)).getLayer(
                LayerConstants.FEEDBACK_LAYER);
        assertEquals(1, layer.getChildren().size());
        Rectangle seen = ((IFigure) layer.getChildren().get(0)).getBounds();
        assertTrue(seen.right() <= width + MARGIN, () -> seen + " of " + width);
    }

    private static List<Length> coordinates(Wall wall) {
        return List.of(wall.getFromX(), wall.getFromY(), wall.getToX(), wall.getToY());
    }

    private static List<Object> content(Storey storey) {
        return storey.getWalls().stream().<Object>flatMap(wall -> Stream.concat(
                Stream.of(wall.getMark(), coordinates(wall)), wall.getOpenings().stream().map(
                        opening -> List.of(opening.getMark(), opening.getOffset(), opening.getWidth()))))
                .toList();
    }

    @Test
    void fourClicksAndTheFirstCornerMakeARoomOfWholeUnits() {
        drawRoom();

        assertEquals(List.of("W1", "W2", "W3", "W4"), plan.storey().getWalls().stream().map(Wall::getMark).toList());
        assertEquals(List.of(Kind.CORNER, Kind.CORNER, Kind.CORNER, Kind.CORNER),
                plan.editor().state().shape().meetings().stream().map(PlanMeeting::kind).toList());
        Length step = Length.ofInchFraction(29, 4);
        plan.editor().state().shape().walls().values().forEach(wall -> {
            assertTrue(wall.heading().east() == 0 || wall.heading().north() == 0, "walls are square");
            assertEquals(0, wall.length().plus(Length.ofInchFraction(1, 2)).units() % step.units(),
                    () -> wall.length() + " is no length of whole and half units");
        });
    }

    @Test
    void typedLengthIsFromFaceToFace() {
        plan.press("Wall");
        plan.click(new Point(220, 400));
        plan.move(new Point(330, 402));
        plan.key('1', '1', 0);
        Text entry = entry();
        assertEquals("1", entry.getText());
        entry.setText("12'-0\"");
        entry.notifyListeners(SWT.DefaultSelection, new Event());
        OpenPlan.settle();

        Wall wall = plan.wall("W1");
        assertEquals(Length.ofInches(144), wall.getToX().minus(wall.getFromX()).plus(Length.ofInches(10)));
        assertEquals(wall.getFromY(), wall.getToY());
    }

    @Test
    void wallsAreDrawnWithTheKeysAlone() {
        plan.key('w', 'w', 0);
        assertTrue(plan.isPressed("Wall"));
        plan.key(SWT.CR, SWT.CR, 0);
        for (int i = 0; i < 20; i++) {
            plan.key(SWT.ARROW_RIGHT, (char) 0, 0);
        }
        plan.key(SWT.CR, SWT.CR, 0);
        plan.key(SWT.ESC, SWT.ESC, 0);
        plan.key(SWT.ESC, SWT.ESC, 0);

        assertEquals(1, plan.storey().getWalls().size());
        assertTrue(plan.wall("W1").getToX().isGreaterThan(Length.ofInches(100)));
        assertTrue(plan.isPressed("Select"));
    }

    @Test
    void drawnRoomWithADoorIsTheSameAfterUndoSaveAndReopening() throws Exception {
        drawRoom();
        plan.press("Select");
        plan.press("Fit (Home)");
        plan.press("Door");
        plan.click(plan.pixel(plan.part(plan.wall("W1")).shape().orElseThrow().middle()));
        Opening door = plan.opening("D1");
        assertEquals(OpeningKind.DOOR, door.getKind());
        assertTrue(plan.isPressed("Select"), "the tool is put down");
        Length placed = door.getOffset();

        plan.drag(plan.pixel(middle(door)), 60, 0, 0);
        assertTrue(door.getOffset().isGreaterThan(placed));
        Length dragged = door.getOffset();
        OpenPlan.command("org.eclipse.ui.edit.undo");
        assertEquals(placed, door.getOffset());
        OpenPlan.command("org.eclipse.ui.edit.redo");
        assertEquals(dragged, door.getOffset());
        OpenPlan.command("org.eclipse.ui.edit.undo");
        assertTrue(plan.editor().isDirty());

        OpenPlan.command("org.eclipse.ui.file.save");
        assertFalse(plan.editor().isDirty());
        List<Object> saved = content(plan.storey());
        OpenPlan.closeAll();
        assertEquals(saved, content(new ProjectStore().load(file).getBuilding().getStoreys().get(0)));
        plan = OpenPlan.of(file);
        assertEquals(saved, content(plan.storey()));
        assertTrue(plan.part(plan.opening("D1")).getFigure().getBounds().width > 0);
    }

    private PlanPoint middle(Opening opening) {
        return plan.part(opening).wall().orElseThrow().at(
                opening.getOffset().plus(Length.ofUnits(opening.getWidth().units() / 2)), Length.ZERO);
    }

    @Test
    void anotherStoreyIsShownWithTheOneBelowUnderneath() {
        drawRoom();
        plan.press("Select");
        Combo storey = plan.combos().get(0);
        storey.select(1);
        storey.notifyListeners(SWT.Selection, new Event());
        OpenPlan.settle();
        assertEquals("2", plan.storey().getMark());
        assertEquals("Plan of Storey 2", plan.editor().getTitle());
        assertTrue(plan.says("Storey 2 has no walls yet."));

        Combo underlay = plan.combos().get(1);
        underlay.select(1);
        underlay.notifyListeners(SWT.Selection, new Event());
        OpenPlan.settle();
        assertEquals(4, plan.editor().state().underlay().orElseThrow().walls().size());
    }

    @Test
    void doorBesideAllWallsIsNotPlaced() {
        drawRoom();
        plan.press("Door");
        plan.click(plan.pixel(inches(-5000, -5000)));

        assertTrue(plan.storey().getWalls().stream().allMatch(wall -> wall.getOpenings().isEmpty()));
        assertTrue(plan.says("There is no wall here."));
    }

    private Text entry() {
        for (var child : ((Composite) plan.viewer().getControl()).getChildren()) {
            if (child instanceof Composite box && box.getChildren().length > 0
                    && box.getChildren()[0] instanceof Text text) {
                return text;
            }
        }
        throw new AssertionError("There is no field to type into.");
    }
}
