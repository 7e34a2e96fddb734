package org.coursewright.layout.ui.chain;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

import org.coursewright.bond.Course;
import org.coursewright.bond.CourseLayout;
import org.coursewright.bond.Obstacle;
import org.coursewright.bond.Pin;
import org.coursewright.bond.Run;
import org.coursewright.bond.ShortLap;
import org.coursewright.bond.UnfillableRun;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;
import org.coursewright.layout.ui.face.Corners;
import org.coursewright.layout.ui.face.CutInquest;
import org.coursewright.layout.ui.face.FaceCourse;
import org.coursewright.layout.ui.face.FaceDrawing;
import org.coursewright.layout.ui.face.TopLine;
import org.coursewright.measure.Length;

/**
 * A wall seen from its other side: left and right exchanged. What only words are made of, such as why pieces are cut, is left
 * out.
 *
 * @param length of the wall
 */
record MirroredDrawing(Length length) {

    static FaceDrawing of(FaceDrawing drawing) {
        return new MirroredDrawing(drawing.face().length()).mirrored(drawing);
    }

    private FaceDrawing mirrored(FaceDrawing drawing) {
        WallLayout layout = mirrored(drawing.layout());
        List<FaceCourse> courses = new ArrayList<>();
        for (int i = 0; i < drawing.courses().size(); i++) {
            FaceCourse course = drawing.courses().get(i);
            courses.add(FaceCourse.of(layout.courses().get(i), course.top().minus(course.unitBottom())));
        }
        return new FaceDrawing(mirrored(drawing.face()), layout, mirrored(drawing.top()), courses,
                CutInquest.NONE, drawing.meetings(),
                new Corners(drawing.corners().end(), drawing.corners().start()), drawing.effort());
    }

    private Length other(Length at) {
        return length.minus(at);
    }

    private WallFace mirrored(WallFace face) {
        return new WallFace(face.mark(), length, face.stock(), face.rule(),
                face.courses().stream().map(this::mirrored).toList(), face.end(), face.start(),
                face.obstacles().stream().map(this::mirrored).toList(),
                face.pins().stream().map(this::mirrored).toList());
    }

    private Obstacle mirrored(Obstacle obstacle) {
        return new Obstacle(obstacle.kind(), obstacle.mark(), other(obstacle.to()), other(obstacle.from()),
                obstacle.firstCourse(), obstacle.lastCourse(), obstacle.meeting());
    }

    private Pin mirrored(Pin pin) {
        return pin.moved(other(pin.at()).minus(pin.at()));
    }

    private WallLayout mirrored(WallLayout layout) {
        return new WallLayout(layout.mark(), layout.courses().stream().map(this::mirrored).toList(),
                layout.cutPieces(), layout.shortLaps().stream().map(this::mirrored).toList(), layout.straightJoints(),
                layout.unfillable().stream().map(this::mirrored).toList(), layout.optimal(), layout.lowerBound());
    }

    private CourseLayout mirrored(CourseLayout course) {
        return new CourseLayout(mirrored(course.course()),
                reversed(course.runs().stream().map(this::mirrored).toList()));
    }

    private Course mirrored(Course course) {
        return new Course(course.number(), course.level(), course.bottom(), course.height(), other(course.to()),
                other(course.from()), other(course.topTo()), other(course.topFrom()));
    }

    private Run mirrored(Run run) {
        return new Run(other(run.to()), other(run.from()), run.endsWith(), run.startsWith(), run.joint(),
                run.jointCount(), reversed(run.pieces()));
    }

    private ShortLap mirrored(ShortLap lap) {
        return new ShortLap(lap.lower(), lap.upper(), other(lap.at()), lap.lap(), lap.least());
    }

    private UnfillableRun mirrored(UnfillableRun run) {
        return new UnfillableRun(run.course(), other(run.to()), other(run.from()), run.endsWith(), run.startsWith(),
                run.reason(), run.nearest());
    }

    private TopLine mirrored(TopLine top) {
        return new TopLine(reversed(top.points().stream()
                .map(point -> new TopLine.Point(other(point.offset()), point.height())).toList()));
    }

    private static <T> List<T> reversed(List<T> list) {
        List<T> turned = new ArrayList<>(list);
        Collections.reverse(turned);
        return turned;
    }
}
