package org.coursewright.layout.ui.paint;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;

import org.coursewright.bond.Obstacle;
import org.coursewright.bond.Run;
import org.coursewright.bond.ShortLap;
import org.coursewright.bond.UnfillableRun;
import org.coursewright.layout.ui.face.FaceCourse;
import org.coursewright.layout.ui.face.FaceDrawing;
import org.coursewright.measure.Length;
import org.eclipse.draw2d.geometry.Rectangle;

/**
 * What has to be painted anew once a wall is laid in another way. While an opening is dragged most courses stay as they are,
 * and painting twenty thousand pieces takes longer than laying some hundred.
 *
 * @param before what has been painted
 * @param after what is to be seen
 */
public record FaceChange(FacePainter before, FacePainter after) {

    /** Pixels by which marks reach beyond the course that they are in. */
    private static final int MARK = 14;

    /** @return pixels that contain all differences, empty if there is none */
    public Rectangle area() {
        if (!isOnlyLaidAnew()) {
            return before.bounds().getUnion(after.bounds());
        }
        List<Rectangle> parts = new ArrayList<>();
        for (int i = 0; i < after.drawing().courses().size(); i++) {
            course(before.drawing().courses().get(i), after.drawing().courses().get(i), parts);
        }
        differing(before.drawing().face().obstacles(), after.drawing().face().obstacles())
                .forEach(each -> parts.add(box(each)));
        differing(before.drawing().layout().shortLaps(), after.drawing().layout().shortLaps())
                .forEach(each -> parts.add(box(each)));
        differing(before.drawing().layout().unfillable(), after.drawing().layout().unfillable())
                .forEach(each -> parts.add(box(each)));
        return parts.stream().reduce(Rectangle::getUnion).map(all -> all.getExpanded(MARK, MARK))
                .orElseGet(Rectangle::new);
    }

    /** Whether the wall has the same size, top, ends and pins, and is painted in the same way at the same place. */
    private boolean isOnlyLaidAnew() {
        FaceDrawing old = before.drawing();
        FaceDrawing now = after.drawing();
        return before.place().equals(after.place()) && before.ink().equals(after.ink())
                && before.format().equals(after.format()) && before.upTo() == after.upTo()
                && old.top().equals(now.top()) && old.corners().equals(now.corners())
                && old.face().courses().equals(now.face().courses()) && old.face().pins().equals(now.face().pins())
                && old.courses().size() == now.courses().size() && !now.courses().isEmpty();
    }

    private void course(FaceCourse old, FaceCourse now, Collection<Rectangle> parts) {
        differing(old.runs(), now.runs()).forEach(run -> parts.add(box(run, now)));
    }

    private static <T> Stream<T> differing(List<T> old, List<T> now) {
        return old.equals(now)
                ? Stream.empty()
                : Stream.concat(old.stream().filter(each -> !now.contains(each)),
                        now.stream().filter(each -> !old.contains(each)));
    }

    private Rectangle box(Run run, FaceCourse course) {
        return after.place().box(run.from(), run.to(), course.course().bottom(), course.top());
    }

    private Rectangle box(Obstacle obstacle) {
        return box(obstacle.from(), obstacle.to(), obstacle.firstCourse(), obstacle.lastCourse());
    }

    private Rectangle box(ShortLap lap) {
        return box(lap.at(), lap.at(), lap.lower(), lap.upper());
    }

    private Rectangle box(UnfillableRun run) {
        return box(run.from(), run.to(), run.course(), run.course());
    }

    private Rectangle box(Length from, Length to, int lowest, int highest) {
        List<FaceCourse> courses = after.drawing().courses();
        int last = Math.max(1, Math.min(courses.size(), highest));
        int first = Math.max(1, Math.min(last, lowest));
        return after.place().box(from, to, courses.get(first - 1).course().bottom(), courses.get(last - 1).top());
    }
}
