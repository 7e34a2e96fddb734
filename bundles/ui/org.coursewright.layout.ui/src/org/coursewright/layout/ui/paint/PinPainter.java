package org.coursewright.layout.ui.paint;

import org.coursewright.bond.Pin;
import org.coursewright.bond.Run;
import org.coursewright.layout.ui.face.FaceCourse;
import org.coursewright.layout.ui.face.FaceDrawing;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;

/**
 * Points out what was fixed by hand: a piece by a frame, the joints of a run by a line under it, both with a pin's head at
 * the place.
 *
 * @param painter of the wall
 */
record PinPainter(FacePainter painter) {

    private static final int LINE = 2;
    private static final int HEAD = 7;

    void paint(Graphics graphics) {
        FaceDrawing drawing = painter.drawing();
        graphics.setForegroundColor(painter.ink().basic().accent());
        graphics.setLineWidth(LINE);
        drawing.face().pins().stream().filter(pin -> pin.course() <= painter.upTo())
                .forEach(pin -> drawing.course(pin.course()).ifPresent(course -> paint(graphics, pin, course)));
        graphics.setLineWidth(1);
    }

    private void paint(Graphics graphics, Pin pin, FaceCourse course) {
        FacePlace place = painter.place();
        if (pin instanceof Pin.OfPiece) {
            course.pieceAt(pin.at()).map(piece -> place.box(piece.from(), piece.to(), course.unitBottom(), course
                    .top())).ifPresent(box -> graphics.drawRectangle(box.x, box.y, box.width - 1, box.height - 1));
        } else {
            course.runs().stream().filter(run -> isIn(run, pin)).findFirst().ifPresent(run -> graphics.drawLine(
                    place.x(run.from()), place.y(course.unitBottom()), place.x(run.to()),
                    place.y(course.unitBottom())));
        }
        Rectangle row = place.box(pin.at(), pin.at(), course.unitBottom(), course.top());
        head(graphics, painter.ink(), row.getCenter());
    }

    private static boolean isIn(Run run, Pin pin) {
        return !pin.at().isLessThan(run.from()) && pin.at().isLessThan(run.to());
    }

    /** The head of a pin. */
    static void head(Graphics graphics, FaceInk ink, Point at) {
        graphics.setBackgroundColor(ink.basic().accent());
        graphics.fillOval(at.x - HEAD / 2, at.y - HEAD / 2, HEAD, HEAD);
    }
}
