package org.coursewright.layout.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.coursewright.diagram.ui.scale.DiagramScale;
import org.coursewright.layout.ui.face.FaceCourse;
import org.coursewright.layout.ui.face.FaceDrawing;
import org.coursewright.layout.ui.paint.FacePlace;
import org.coursewright.measure.Length;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Scale;
import org.eclipse.swt.widgets.Spinner;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A wall is laid up course by course with the slider and the figure beside it, as a crew sees it grow. */
class PlaybackTest {

    @TempDir
    private Path folder;
    private OpenFace face;
    private FaceDrawing drawing;

    @BeforeEach
    void openTheWall() throws Exception {
        face = OpenFace.of(SmallHouse.in(folder), "W1");
        drawing = face.laid();
        OpenFace.await(() -> face.wallPart().face().drawing().filter(drawing::equals).isPresent());
    }

    @AfterEach
    void closeTheWall() {
        OpenFace.closeAll();
    }

    private static Scale slider() {
        return Screen.all(Scale.class).filter(Control::isVisible).findFirst().orElseThrow();
    }

    private static Spinner figure() {
        return Screen.all(Spinner.class).filter(Control::isVisible).findFirst().orElseThrow();
    }

    private static void slideTo(int course) {
        slider().setSelection(course);
        slider().notifyListeners(SWT.Selection, new Event());
        OpenFace.settle();
    }

    private static void enter(int course) {
        figure().setSelection(course);
        figure().notifyListeners(SWT.Selection, new Event());
        OpenFace.settle();
    }

    private Control canvas() {
        return face.viewer().getControl();
    }

    private long piecesUpTo(int course) {
        return drawing.courses().stream().limit(course).mapToLong(each -> each.pieces().size()).sum();
    }

    /** The middle of the third piece of a course. */
    private Point at(int number) {
        FacePlace place = FacePlace.of(DiagramScale.of(face.viewer()), drawing.top().highest(), canvas().getSize().y);
        FaceCourse course = drawing.course(number).orElseThrow();
        Length middle = Length.ofUnits((course.pieces().get(2).from().units() + course.pieces().get(2).to().units())
                / 2);
        return new Point(place.x(middle), (place.y(course.top()) + place.y(course.unitBottom())) / 2);
    }

    private int colour(Point at) {
        canvas().update();
        Image shot = new Image(Display.getCurrent(), canvas().getSize().x, canvas().getSize().y);
        GC gc = new GC(shot);
        try {
            canvas().print(gc);
            ImageData data = shot.getImageData();
            return data.getPixel(at.x, at.y);
        } finally {
            gc.dispose();
            shot.dispose();
        }
    }

    @Test
    void wallGrowsByACourseWithEveryStepOfTheFigure() {
        int courses = drawing.courses().size();
        assertEquals(courses, figure().getMaximum());
        assertEquals(courses, slider().getSelection());

        for (int course = 1; course <= courses; course++) {
            enter(course);
            assertEquals(piecesUpTo(course), face.wallPart().face().pieces());
            assertEquals(course, slider().getSelection());
        }
    }

    @Test
    void sliderAndFigureGoTogether() {
        for (int course : List.of(3, 1, 2)) {
            slideTo(course);
            assertEquals(course, figure().getSelection());
            assertEquals(piecesUpTo(course), face.wallPart().face().pieces());
        }
    }

    @Test
    void coursesThatAreNotLaidUpAreNotPainted() {
        int laid = colour(at(3));
        int below = colour(at(1));

        slideTo(2);

        assertTrue(colour(at(3)) != laid, "course 3 is still painted");
        assertEquals(below, colour(at(1)));
        slideTo(drawing.courses().size());
        assertEquals(laid, colour(at(3)));
    }

    @Test
    void pieceThatIsNotLaidUpIsNeitherSelectedNorTold() {
        slideTo(2);
        Screen.click(canvas(), at(3).x, at(3).y);
        Screen.key(canvas(), 'p');
        assertTrue(face.wall().getPins().isEmpty());

        Event move = new Event();
        move.x = at(3).x;
        move.y = at(3).y;
        canvas().notifyListeners(SWT.MouseMove, move);
        assertNull(canvas().getToolTipText());
    }

    @Test
    void arrowsStayInWhatIsLaidUp() {
        slideTo(2);
        Screen.click(canvas(), at(2).x, at(2).y);
        Screen.key(canvas(), SWT.ARROW_UP, 0);
        Screen.key(canvas(), 'p');

        assertEquals(List.of(2), face.wall().getPins().stream().map(pin -> pin.getCourse()).toList());
    }

    @Test
    void selectedPieceThatIsTakenDownIsNoLongerSelected() {
        Screen.click(canvas(), at(3).x, at(3).y);
        slideTo(2);
        Screen.key(canvas(), 'p');

        assertTrue(face.wall().getPins().isEmpty());
        assertFalse(face.editor().isDirty());
    }
}
