package org.coursewright.layout.ui.paint;

import java.util.Optional;

import org.coursewright.bond.Obstacle;
import org.coursewright.layout.ui.face.FaceDrawing;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;

/** Draws what interrupts courses, and what is in trouble, up to a course. */
final class ObstaclePainter {

    private final FaceDrawing drawing;
    private final FacePlace place;
    private final FaceInk ink;
    private final int upTo;

    ObstaclePainter(FaceDrawing drawing, FacePlace place, FaceInk ink, int upTo) {
        this.drawing = drawing;
        this.place = place;
        this.ink = ink;
        this.upTo = upTo;
    }

    void paintObstacles(Graphics graphics) {
        drawing.face().obstacles().stream().filter(each -> each.firstCourse() <= upTo)
                .filter(each -> each.kind() != Obstacle.Kind.TEE)
                .forEach(each -> box(each).ifPresent(box -> paint(graphics, each.kind(), box)));
    }

    private Optional<Rectangle> box(Obstacle obstacle) {
        int last = Math.min(Math.min(obstacle.lastCourse(), upTo), drawing.courses().size());
        return drawing.course(obstacle.firstCourse()).flatMap(first -> drawing.course(last).map(
                top -> place.box(obstacle.from(), obstacle.to(), first.course().bottom(), top.top())));
    }

    private void paint(Graphics graphics, Obstacle.Kind kind, Rectangle box) {
        if (kind == Obstacle.Kind.OPENING) {
            FaceSymbols.opening(graphics, ink, box);
        } else {
            FaceSymbols.bearing(graphics, ink, box);
        }
    }

    void paintTrouble(Graphics graphics) {
        drawing.layout().unfillable().stream().filter(run -> run.course() <= upTo)
                .forEach(run -> drawing.course(run.course()).ifPresent(course -> FaceSymbols.unfillable(graphics, ink,
                        place.box(run.from(), run.to(), course.course().bottom(), course.top()))));
        drawing.layout().shortLaps().stream().filter(lap -> lap.lower() < upTo)
                .forEach(lap -> drawing.course(lap.lower()).ifPresent(course -> FaceSymbols.shortLap(graphics, ink,
                        new Point(place.x(lap.at()), place.y(course.top())))));
    }
}
