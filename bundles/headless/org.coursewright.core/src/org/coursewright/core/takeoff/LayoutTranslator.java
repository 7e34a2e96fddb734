package org.coursewright.core.takeoff;

import java.util.List;
import java.util.stream.IntStream;

import org.coursewright.bond.Course;
import org.coursewright.bond.CourseLayout;
import org.coursewright.bond.Piece;
import org.coursewright.bond.Run;
import org.coursewright.bond.RunEnd;
import org.coursewright.bond.WallLayout;
import org.coursewright.measure.Length;
import org.coursewright.takeoff.quantities.LaidCourse;
import org.coursewright.takeoff.quantities.LaidPiece;
import org.coursewright.takeoff.quantities.LaidRun;
import org.coursewright.takeoff.quantities.LaidWall;

/** Tells the take-off engine what the bond engine has laid, run by run. */
final class LayoutTranslator {

    private LayoutTranslator() {
    }

    static LaidWall wall(WallLayout layout, WallBrief brief) {
        return new LaidWall(layout.mark(), brief.unit(), brief.thickness(),
                layout.courses().stream().map(course -> course(course, brief.unit().height())).toList());
    }

    /** A course is a bed joint and, on it, the unit. */
    private static LaidCourse course(CourseLayout laid, Length unitHeight) {
        Course course = laid.course();
        return new LaidCourse(course.number(), unitHeight, course.height().minus(unitHeight),
                laid.runs().stream().map(run -> run(run, course)).toList());
    }

    private static LaidRun run(Run run, Course course) {
        List<Length> tops = RakedTops.of(run, course);
        List<LaidPiece> pieces = IntStream.range(0, tops.size())
                .mapToObj(i -> piece(run.pieces().get(i), tops.get(i))).toList();
        Length joints = run.pieces().stream().map(Piece::length).reduce(run.length(), Length::minus);
        return new LaidRun(run.from(), run.length(), joints, run.startsWith() == RunEnd.JOINT,
                run.endsWith() == RunEnd.JOINT, pieces);
    }

    private static LaidPiece piece(Piece piece, Length top) {
        return new LaidPiece(piece.length(), top, switch (piece.kind()) {
            case WHOLE -> LaidPiece.Kind.WHOLE;
            case SPECIAL -> LaidPiece.Kind.SPECIAL;
            case CUT -> LaidPiece.Kind.CUT;
        });
    }
}
