package org.coursewright.layout.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.coursewright.bond.BondSolver;
import org.coursewright.bond.Piece;
import org.coursewright.core.bond.BuildingLayout;
import org.coursewright.core.bond.LayoutOutcome;
import org.coursewright.core.session.ProjectStore;
import org.coursewright.core.trial.OpeningTrial;
import org.coursewright.diagram.ui.ink.Ink;
import org.coursewright.diagram.ui.scale.DiagramScale;
import org.coursewright.layout.ui.face.FaceCourse;
import org.coursewright.layout.ui.face.FaceDrawing;
import org.coursewright.layout.ui.face.PlacedPiece;
import org.coursewright.layout.ui.paint.FaceChange;
import org.coursewright.layout.ui.paint.FaceInk;
import org.coursewright.layout.ui.paint.FacePainter;
import org.coursewright.layout.ui.paint.FacePlace;
import org.coursewright.layout.ui.paint.GaugePainter;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.coursewright.measure.Progress;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;
import org.coursewright.model.project.Project;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.SWTGraphics;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Display;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is painted of a wall, pixel by pixel. */
class PaintingTest {

    @TempDir
    private Path folder;
    private Wall wall;
    private LayoutOutcome laid;

    @BeforeEach
    void layASmallHouse() throws Exception {
        Project project = new ProjectStore().load(SmallHouse.in(folder));
        wall = project.getBuilding().getStoreys().get(0).getWalls().get(0);
        laid = new BuildingLayout(BondSolver.standard()).lay(project, Progress.NONE);
    }

    private FacePainter painter(LayoutOutcome outcome, double zoom) {
        FaceDrawing drawing = FaceDrawing.of(wall, outcome).orElseThrow();
        return new FacePainter(drawing, FacePlace.of(new DiagramScale(zoom), drawing.top().highest(), 0),
                FaceInk.with(Ink.LIGHT), LengthFormat.INCHES, drawing.courses().size());
    }

    private FacePainter moved(Length by, double zoom) {
        Opening window = wall.getOpenings().get(0);
        FaceDrawing before = FaceDrawing.of(wall, laid).orElseThrow();
        LayoutOutcome tried = new OpeningTrial(window, laid).first(window.getOffset().plus(by), window.getWidth(),
                Progress.NONE);
        FacePainter painter = painter(tried, zoom);
        return new FacePainter(painter.drawing().with(before.corners()), painter.place(), painter.ink(),
                painter.format(), painter.upTo());
    }

    @Test
    void whatLiesOutsideTheChangeIsPaintedAsBefore() {
        for (String by : new String[]{"1/4", "1", "-2 3/4", "7"}) {
            FacePainter before = painter(laid, 0.5);
            FacePainter after = moved(SmallHouse.inches(by), 0.5);
            Rectangle area = new FaceChange(before, after).area();
            ImageData old = painted(before);
            ImageData now = painted(after);

            assertTrue(area.width > 0);
            assertTrue(area.height < before.bounds().height, "only some courses change");
            for (int y = 0; y < now.height; y++) {
                for (int x = 0; x < now.width; x++) {
                    int pixel = old.getPixel(x, y);
                    assertTrue(area.contains(x, y) || pixel == now.getPixel(x, y), "at " + x + ", " + y);
                }
            }
        }
    }

    @Test
    void equalWallsNeedNotBePaintedAgain() {
        assertTrue(new FaceChange(painter(laid, 0.5), painter(laid, 0.5)).area().isEmpty());
    }

    @Test
    void anotherZoomPaintsAllAnew() {
        FacePainter larger = painter(laid, 0.7);

        assertTrue(new FaceChange(painter(laid, 0.5), larger).area().contains(larger.bounds()));
    }

    @Test
    void gaugesAreWrittenWhereTheyFitOnly() {
        assertTrue(gauged(painter(laid, 1)));
        assertFalse(gauged(painter(laid, 0.1)));
    }

    @Test
    void atEachScaleCoursesOfOneHeightLookAlike() {
        for (double zoom = 0.04; zoom < 1; zoom *= 1.15) {
            FacePainter painter = painter(laid, zoom);
            ImageData data = painted(painter);

            // the line over the top course is the wall's outline
            List<Boolean> lined = painter.drawing().courses().stream().limit(painter.upTo() - 1L)
                    .map(course -> isLined(painter, course, data)).distinct().toList();

            assertEquals(1, lined.size(), "some courses are outlined and others are not at zoom " + zoom);
        }
    }

    @Test
    void jointsOfLessThanAPixelAreNotDrawn() {
        FacePainter near = painter(laid, 0.5);
        FacePainter far = painter(laid, 0.08);

        assertTrue(find(painted(near), near.ink().mortar().getRGB()).isPresent());
        assertEquals(Optional.empty(), find(painted(far), far.ink().mortar().getRGB()));
        assertTrue(isLined(far, far.drawing().courses().get(0), painted(far)), "lines stand for the joints");
    }

    /** Whether there is a line along the top of the course's first whole unit. */
    private static boolean isLined(FacePainter painter, FaceCourse course, ImageData data) {
        PlacedPiece whole = course.pieces().stream().filter(piece -> piece.piece().kind() == Piece.Kind.WHOLE)
                .findFirst().orElseThrow();
        int x = (painter.place().x(whole.from()) + painter.place().x(whole.to())) / 2;
        int y = painter.place().y(course.top());
        return data.palette.getRGB(data.getPixel(x, y)).equals(painter.ink().basic().line().getRGB());
    }

    private static boolean gauged(FacePainter painter) {
        ImageData data = image(painter, graphics -> new GaugePainter(painter).paint(graphics, painter.bounds()));
        return find(data, painter.ink().basic().accent().getRGB()).isPresent();
    }

    private static Optional<Point> find(ImageData data, RGB colour) {
        for (int y = 0; y < data.height; y++) {
            for (int x = 0; x < data.width; x++) {
                if (data.palette.getRGB(data.getPixel(x, y)).equals(colour)) {
                    return Optional.of(new Point(x, y));
                }
            }
        }
        return Optional.empty();
    }

    private static ImageData painted(FacePainter painter) {
        return image(painter, graphics -> painter.paint(graphics, painter.bounds(), Optional.empty()));
    }

    private static ImageData image(FacePainter painter, Consumer<Graphics> paint) {
        Rectangle all = painter.bounds();
        assertEquals(0, all.x);
        Image image = new Image(Display.getCurrent(), all.right(), all.bottom());
        GC gc = new GC(image);
        Graphics graphics = new SWTGraphics(gc);
        try {
            graphics.setBackgroundColor(painter.ink().basic().paper());
            graphics.fillRectangle(0, 0, all.right(), all.bottom());
            paint.accept(graphics);
            return image.getImageData();
        } finally {
            graphics.dispose();
            gc.dispose();
            image.dispose();
        }
    }
}
