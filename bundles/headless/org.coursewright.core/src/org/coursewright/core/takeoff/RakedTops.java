package org.coursewright.core.takeoff;

import java.util.ArrayList;
import java.util.List;

import org.coursewright.bond.Course;
import org.coursewright.bond.Piece;
import org.coursewright.bond.Run;
import org.coursewright.bond.RunEnd;
import org.coursewright.measure.Length;

/**
 * How long the pieces of a run are at the top of their course. Under a rake a cut piece is what lies of it between the ends
 * of masonry at the top; a piece that ends below has no length there. Bottom and top lengths of all pieces of a run together
 * give its exact area, head joints under the rake apart, which count in full.
 */
final class RakedTops {

    private final Run run;
    /** Positions are counted in this many parts of a length's unit, so that equal joints need no fraction. */
    private final long parts;
    private final long from;
    private final long to;

    private RakedTops(Run run, Course course) {
        this.run = run;
        parts = Math.max(run.jointCount(), 1);
        from = course.topFrom().isGreaterThan(course.from()) ? offset(course.topFrom()) : 0;
        to = course.topTo().isLessThan(course.to()) ? offset(course.topTo()) : offset(run.to());
    }

    static List<Length> of(Run run, Course course) {
        return new RakedTops(run, course).lengths();
    }

    private List<Length> lengths() {
        long joint = run.joint().map(width -> width.total().units()).orElse(0L);
        long position = run.startsWith() == RunEnd.JOINT ? joint : 0;
        List<Length> tops = new ArrayList<>();
        for (Piece piece : run.pieces()) {
            long end = position + piece.length().units() * parts;
            tops.add(piece.kind() == Piece.Kind.CUT ? between(position, end) : piece.length());
            position = end + joint;
        }
        return tops;
    }

    /** Rounded to the nearest unit, 1/320 mm. */
    private Length between(long start, long end) {
        long left = Math.max(0, Math.min(end, to) - Math.max(start, from));
        return Length.ofUnits(Math.floorDiv(2 * left + parts, 2 * parts));
    }

    private long offset(Length position) {
        return position.minus(run.from()).units() * parts;
    }
}
