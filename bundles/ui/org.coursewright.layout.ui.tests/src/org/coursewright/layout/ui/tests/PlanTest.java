package org.coursewright.layout.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import javax.xml.parsers.DocumentBuilderFactory;

import org.coursewright.core.geometry.Place;
import org.coursewright.diagram.ui.history.EditCommand;
import org.coursewright.diagram.ui.picture.PicturePrint;
import org.coursewright.diagram.ui.picture.PngFile;
import org.coursewright.diagram.ui.picture.SvgFile;
import org.coursewright.diagram.ui.scale.DiagramScale;
import org.coursewright.layout.ui.plan.action.AlignAction;
import org.coursewright.layout.ui.plan.action.CopyAction;
import org.coursewright.layout.ui.plan.action.MirrorAction;
import org.coursewright.layout.ui.plan.change.Alignment;
import org.coursewright.layout.ui.plan.dimension.Dimension;
import org.coursewright.layout.ui.plan.paint.OpeningPainting;
import org.coursewright.layout.ui.plan.paint.PaintedFigure;
import org.coursewright.layout.ui.plan.paint.PlanPicture;
import org.coursewright.layout.ui.plan.part.DimensionPart;
import org.coursewright.layout.ui.plan.part.GripRequest;
import org.coursewright.layout.ui.plan.part.PlanPart;
import org.coursewright.layout.ui.plan.part.StoreyPaintings;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;
import org.coursewright.model.edit.command.MoveOpeningCommand;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.gef.AccessibleEditPart;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.Request;
import org.eclipse.gef.RequestConstants;
import org.eclipse.gef.commands.CommandStack;
import org.eclipse.gef.ui.actions.ActionRegistry;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.keys.IBindingService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;

/** The plan of the demo building, from the navigator to the file. */
class PlanTest {

    /** At this zoom a pixel is 5 mm. */
    private static final double CLOSE = 0.4;
    private static final Length MODULE = Length.ofInchFraction(29, 4);

    @TempDir
    private Path folder;
    private OpenPlan plan;

    @BeforeEach
    void openTheDemo() throws Exception {
        plan = OpenPlan.of(Demo.copyInto(folder));
    }

    @AfterEach
    void closeTheDemo() {
        OpenPlan.closeAll();
    }

    private CommandStack history() {
        return plan.viewer().getEditDomain().getCommandStack();
    }

    private DimensionPart dimension(String wall, Dimension.Kind kind) {
        return plan.dimensions().stream().filter(part -> part.dimension().orElseThrow().kind() == kind
                && part.dimension().orElseThrow().wall() == plan.wall(wall)).findFirst().orElseThrow();
    }

    private void select(Object... models) {
        plan.viewer().deselectAll();
        for (Object model : models) {
            plan.viewer().appendSelection((EditPart) plan.viewer().getEditPartRegistry().get(model));
        }
        OpenPlan.settle();
    }

    private IAction action(String id) {
        return ((ActionRegistry) plan.editor().getAdapter(ActionRegistry.class)).getAction(id);
    }

    private void run(String id) {
        assertTrue(action(id).isEnabled());
        action(id).run();
        OpenPlan.settle();
    }

    @Test
    void everyWallAndOpeningIsShown() {
        int openings = plan.storey().getWalls().stream().mapToInt(wall -> wall.getOpenings().size()).sum();
        long shown = plan.storeyPart().childParts().stream().filter(PlanPart.class::isInstance).count();

        assertEquals(14, plan.storey().getWalls().size());
        assertEquals(14 + openings, shown);
        assertTrue(plan.says("14 walls, 12 openings"));
    }

    @Test
    void dimensionsOutsideReadAsTheyWereTyped() {
        List<String> words = plan.dimensions().stream().map(DimensionPart::words).toList();

        assertTrue(words.contains("39'-10\" over all, Wall W1"), words::toString);
        assertTrue(words.contains("5'-4 3/4\" to the near jamb of Window N1 along Wall W1"), words::toString);
        assertTrue(words.contains("3'-8\" between the jambs of Door D1"), words::toString);
    }

    @Test
    void wallInsideIsMeasuredWhileItIsSelected() {
        Wall partition = plan.wall("P4");
        assertTrue(plan.dimensions().stream().noneMatch(part -> part.dimension().orElseThrow().wall() == partition));

        select(partition);

        assertTrue(plan.dimensions().stream().anyMatch(part -> part.dimension().orElseThrow().wall() == partition));
        assertTrue(plan.says("Wall P4: "));
    }

    @Test
    void findingsAreMarkedOnTheirElements() {
        Opening door = plan.opening("D1");
        Opening window = plan.opening("N2");

        history().execute(new EditCommand(new MoveOpeningCommand(door, window.getOffset())));
        OpenPlan.await(() -> isMarked(door) || isMarked(window));

        assertTrue(new Hint(plan.part(isMarked(door) ? door : window)).text().lines().count() > 1);
        assertFalse(isMarked(plan.opening("D4")));
    }

    private boolean isMarked(Opening opening) {
        return ((OpeningPainting) ((PaintedFigure) plan.part(opening).getFigure()).painting().orElseThrow()).trouble()
                .isPresent();
    }

    /** The hint that appears beside the mouse over a part. */
    private record Hint(PlanPart<?> part) {
        String text() {
            return ((org.eclipse.draw2d.Label) part.getFigure().getToolTip()).getText();
        }
    }

    @Test
    void draggedWindowStopsWhereUnitsEnd() throws Exception {
        Opening window = plan.opening("N2");
        Length before = window.getOffset();
        DiagramScale.zoom(plan.viewer()).setZoom(CLOSE);
        plan.viewer().reveal(plan.part(window));
        OpenPlan.settle();
        Point middle = plan.pixel(plan.part(window).wall().orElseThrow().at(
                before.plus(Length.ofUnits(window.getWidth().units() / 2)), Length.ZERO));

        plan.drag(middle, 10, 1, 0);
        assertEquals(Length.ofInchFraction(1013, 4), window.getOffset(), "1 1/4 in further, as the demo's notes say");

        OpenPlan.command("org.eclipse.ui.edit.undo");
        assertEquals(before, window.getOffset());
    }

    @Test
    void draggedJambKeepsTheOtherInOneStep() {
        Opening window = plan.opening("N1");
        Length end = window.getOffset().plus(window.getWidth());
        GripRequest grip = new GripRequest(Place.START);
        grip.move(new Point(-40, 0), false, false);

        plan.part(window).showSourceFeedback(grip);
        history().execute(plan.part(window).getCommand(grip));
        plan.part(window).eraseSourceFeedback(grip);

        assertEquals(end, window.getOffset().plus(window.getWidth()));
        assertEquals(0, window.getOffset().plus(Length.ofInchFraction(1, 2)).units() % MODULE.units());
        history().undo();
        assertEquals(end, window.getOffset().plus(window.getWidth()));
    }

    @Test
    void draggedWallTakesAlongWhatEndsAtIt() {
        Wall partition = plan.wall("P1");
        Length before = partition.getFromX();
        Length along = plan.wall("P3").getToX();
        Point at = plan.pixel(plan.part(partition).shape().orElseThrow().at(Length.ofInches(200), Length.ZERO));

        plan.drag(at, 15, 3, 0);

        Length by = partition.getFromX().minus(before);
        assertTrue(by.signum() > 0);
        assertEquals(0, by.units() % MODULE.units());
        assertEquals(before.plus(by), partition.getToX());
        assertEquals(along.plus(by), plan.wall("P3").getToX());
        assertEquals(partition.getFromX(), plan.wall("P4").getFromX());
        history().undo();
        assertEquals(before, partition.getFromX());
        assertEquals(along, plan.wall("P3").getToX());
    }

    @Test
    void endInTheOpenIsDraggedByItsGrip() {
        Wall screen = plan.wall("C1");
        select(screen);
        Length before = screen.getToX();

        plan.drag(plan.pixel(plan.part(screen).shape().orElseThrow().to()), 50, 0, 0);

        assertTrue(screen.getToX().isGreaterThan(before));
        assertEquals(screen.getFromY(), screen.getToY());
    }

    @Test
    void typedOverallLengthMovesTheEndWall() {
        DimensionPart overall = dimension("W1", Dimension.Kind.OVERALL);
        overall.performRequest(new Request(RequestConstants.REQ_OPEN));
        Text entry = entry();
        assertEquals("39'-10\"", entry.getText());
        entry.setText("41'");
        entry.notifyListeners(SWT.DefaultSelection, new Event());
        OpenPlan.settle();

        assertEquals(Length.ofInches(492), plan.part(plan.wall("W1")).shape().orElseThrow().length());
        assertEquals(plan.wall("W1").getToX(), plan.wall("W2").getFromX());
        assertEquals(plan.wall("W2").getFromX(), plan.wall("P5").getToX());
        assertEquals("Stretch Wall W1", history().getUndoCommand().getLabel());
        assertTrue(entry.isDisposed());
    }

    @Test
    void typedNonsenseAndRefusedLengthsAreAnswered() {
        DimensionPart pier = dimension("W1", Dimension.Kind.TO_JAMB);
        pier.performRequest(new Request(RequestConstants.REQ_DIRECT_EDIT));
        Text entry = entry();
        entry.setText("a lot");
        entry.notifyListeners(SWT.DefaultSelection, new Event());
        assertTrue(refusal(entry).contains("a lot"));

        entry.setText("-2'");
        entry.notifyListeners(SWT.DefaultSelection, new Event());
        assertTrue(refusal(entry).contains("Window N1"), () -> refusal(entry));
        assertFalse(history().isDirty());
    }

    /** Delete and Ctrl+A are for the text while a length is typed, and for the plan afterwards. */
    @Test
    void windowLeavesKeysToTheFieldWhileALengthIsTyped() {
        IBindingService keys = PlatformUI.getWorkbench().getService(IBindingService.class);
        dimension("W1", Dimension.Kind.OVERALL).performRequest(new Request(RequestConstants.REQ_OPEN));
        Text entry = entry();
        entry.forceFocus();
        OpenPlan.settle();
        assertFalse(keys.isKeyFilterEnabled());

        entry.notifyListeners(SWT.FocusOut, new Event());
        OpenPlan.settle();
        assertTrue(keys.isKeyFilterEnabled());
    }

    private static String refusal(Text entry) {
        return ((Label) entry.getParent().getChildren()[1]).getText();
    }

    private Text entry() {
        for (Control child : ((Composite) plan.viewer().getControl()).getChildren()) {
            if (child instanceof Composite box && box.getChildren().length > 0
                    && box.getChildren()[0] instanceof Text text) {
                return text;
            }
        }
        throw new AssertionError("There is no field to type into.");
    }

    @Test
    void arrowsMoveByTheModuleAndWithShiftByTheFineStep() {
        Opening door = plan.opening("D1");
        Length before = door.getOffset();
        select(door);

        plan.key(SWT.ARROW_RIGHT, (char) 0, 0);
        assertEquals(before.plus(MODULE), door.getOffset());
        plan.key(SWT.ARROW_LEFT, (char) 0, SWT.SHIFT);
        assertEquals(before.plus(MODULE).minus(Length.ofInchFraction(1, 4)), door.getOffset());

        Wall partition = plan.wall("P4");
        Length north = partition.getFromY();
        select(partition);
        plan.key(SWT.ARROW_UP, (char) 0, 0);
        assertEquals(north.plus(MODULE), partition.getFromY());
    }

    @Test
    void moveThatLeavesNoRoomForADoorIsRefusedInWords() {
        Wall partition = plan.wall("P1");
        Length before = partition.getFromX();
        select(partition);
        for (int i = 0; i < 5; i++) {
            plan.key(SWT.ARROW_RIGHT, (char) 0, 0);
        }

        assertEquals(before.plus(MODULE.times(4)), partition.getFromX());
        assertEquals(Length.ZERO, plan.opening("D5").getOffset());
        assertTrue(plan.says("The Offset of Door D5 cannot be -7 1/4\""));
    }

    @Test
    void everyPartHasAnAccessibleName() {
        for (EditPart part : plan.storeyPart().childParts()) {
            AccessibleEvent event = new AccessibleEvent(plan.viewer().getControl());
            event.childID = ACC.CHILDID_SELF;
            ((AccessibleEditPart) part.getAdapter(AccessibleEditPart.class)).getName(event);
            assertFalse(event.result == null || event.result.isBlank(), () -> part + " has no name");
        }
    }

    @Test
    void frameSelectsWhatLiesInIt() {
        var area = plan.viewer().getControl().getSize();

        plan.drag(new Point(4, 4), area.x - 8, area.y - 8, 0);

        long elements = plan.storeyPart().childParts().stream().filter(PlanPart.class::isInstance)
                .filter(plan.viewer().getSelectedEditParts()::contains).count();
        assertEquals(26, elements);
        assertTrue(plan.says(" elements selected"));
    }

    @Test
    void deletedWallTakesItsOpeningsAlongInOneStep() throws Exception {
        Wall partition = plan.wall("P5");
        select(partition, partition.getOpenings().get(0));

        OpenPlan.command("org.eclipse.ui.edit.delete");
        assertFalse(plan.storey().getWalls().contains(partition));
        OpenPlan.command("org.eclipse.ui.edit.undo");
        assertTrue(plan.storey().getWalls().contains(partition));
        assertEquals(1, partition.getOpenings().size());
    }

    @Test
    void copiesBearMarksOfTheirOwnAndAreSelected() {
        select(plan.wall("S1"), plan.wall("S2"));
        run(CopyAction.ID);

        assertEquals(16, plan.storey().getWalls().size());
        Set<String> marks = plan.storey().getWalls().stream().map(Wall::getMark).collect(Collectors.toSet());
        assertEquals(16, marks.size());
        assertEquals(2, plan.viewer().getSelectedEditParts().size());
        assertTrue(plan.says("2 elements selected"));
        history().undo();
        assertEquals(14, plan.storey().getWalls().size());
    }

    @Test
    void mirroredWallsLieWhereTheirImagesWere() {
        Wall one = plan.wall("S1");
        Wall other = plan.wall("S3");
        Length left = one.getFromX();
        Length right = other.getFromX();
        select(one, other);

        run(MirrorAction.SIDEWAYS);

        assertEquals(right, one.getFromX());
        assertEquals(left, other.getFromX());
    }

    @Test
    void alignedWallIsInLineWithTheOneSelectedLast() {
        select(plan.wall("P3"), plan.wall("P5"));
        run(AlignAction.id(Alignment.Side.CENTRE));

        assertEquals(plan.wall("P5").getFromY(), plan.wall("P3").getFromY());
        assertEquals(plan.wall("P5").getFromY(), plan.wall("P3").getToY());
    }

    @Test
    void alignedOpeningIsOppositeTheOneSelectedLast() {
        select(plan.opening("D4"), plan.opening("N1"));
        run(AlignAction.id(Alignment.Side.CENTRE));

        Opening moved = plan.opening("D4");
        Opening model = plan.opening("N1");
        Length half = Length.ofUnits(moved.getWidth().units() / 2);
        assertEquals(plan.part(model).wall().orElseThrow().at(model.getOffset().plus(half), Length.ZERO).x(),
                plan.part(moved).wall().orElseThrow().at(moved.getOffset().plus(half), Length.ZERO).x());
    }

    @Test
    void pictureShowsTheWholePlan() throws Exception {
        Path png = folder.resolve("plan.png");
        PlanPicture picture = new StoreyPaintings(plan.editor().state()).picture().orElseThrow();
        new PngFile(png).write(picture, Display.getCurrent());

        ImageData image = new ImageData(png.toString());
        assertEquals(picture.size().width, image.width);
        assertTrue(IntStream.range(0, image.width * image.height)
                .map(at -> image.getPixel(at % image.width, at / image.width)).distinct().count() > 8);
    }

    @Test
    void drawingHasTheWordsOfThePlan() throws Exception {
        Path svg = folder.resolve("plan.svg");
        new SvgFile(svg).write(new StoreyPaintings(plan.editor().state()).picture().orElseThrow());

        Document document = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(svg.toFile());
        NodeList texts = document.getElementsByTagName("text");
        Set<String> words = IntStream.range(0, texts.getLength()).mapToObj(i -> texts.item(i).getTextContent())
                .collect(Collectors.toSet());
        assertTrue(words.containsAll(Set.of("39'-10\"", "5'-4 3/4\"", "N1", "D1", "W1")), words::toString);
        assertTrue(document.getElementsByTagName("polygon").getLength() >= 26);
    }

    @Test
    void printFitsThePage() {
        PlanPicture picture = new StoreyPaintings(plan.editor().state()).picture().orElseThrow();
        Rectangle page = new Rectangle(10, 20, 2000, 3000);

        Rectangle printed = new PicturePrint(picture).fitted(page);

        assertEquals(page, page.union(printed));
        assertTrue(printed.width == 2000 || printed.height == 3000);
        assertEquals((double) picture.size().width / picture.size().height, (double) printed.width / printed.height,
                0.01);
    }

    @Test
    void selectionInTheNavigatorIsShownInThePlan() throws Exception {
        OpenPlan.page().showView("org.coursewright.workbench.navigator").getSite().getSelectionProvider()
                .setSelection(new StructuredSelection(plan.wall("S2")));
        OpenPlan.settle();

        assertEquals(List.of(plan.part(plan.wall("S2"))), plan.viewer().getSelectedEditParts());
    }
}
