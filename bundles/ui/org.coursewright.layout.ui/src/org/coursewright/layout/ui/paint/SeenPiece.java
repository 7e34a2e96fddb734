package org.coursewright.layout.ui.paint;

import org.coursewright.bond.Run;
import org.coursewright.layout.ui.face.FaceCourse;
import org.coursewright.layout.ui.face.PlacedPiece;
import org.coursewright.measure.Length;

/**
 * What is seen of a piece in a wall. A joint of less than a pixel would be there in one course and not in the next, as
 * rounding has it: the piece covers it, and the line between two pieces stands for it.
 *
 * @param from where it begins along the wall, with the joint before it if that is not seen
 * @param to where it ends, with the joint after it if that is not seen
 * @param bottom above the wall's base, with the bed joint if that is not seen
 * @param least its length or its height, whichever is less, in pixels before rounding
 * @param closedBelow whether no bed joint is seen under it
 * @param closedAfter whether no joint is seen between it and the next piece
 */
record SeenPiece(Length from, Length to, Length bottom, double least, boolean closedBelow, boolean closedAfter) {

    /**
     * @param place of the wall
     * @param course that the piece is in
     * @param index of the piece in its course
     * @return what is seen of it
     */
    static SeenPiece of(FacePlace place, FaceCourse course, int index) {
        PlacedPiece piece = course.pieces().get(index);
        Run run = piece.run();
        boolean first = !isOf(run, course, index - 1);
        boolean last = !isOf(run, course, index + 1);
        Length before = first ? run.from() : piece.from();
        Length after = last ? run.to() : course.pieces().get(index + 1).from();
        boolean closedAfter = isHidden(place, piece.to(), after);
        boolean closedBelow = isHidden(place, course.course().bottom(), course.unitBottom());
        return new SeenPiece(isHidden(place, before, piece.from()) ? before : piece.from(),
                closedAfter ? after : piece.to(), closedBelow ? course.course().bottom() : course.unitBottom(),
                least(place, course, piece), closedBelow, closedAfter && !last);
    }

    private static boolean isOf(Run run, FaceCourse course, int index) {
        return index >= 0 && index < course.pieces().size() && course.pieces().get(index).run() == run;
    }

    private static boolean isHidden(FacePlace place, Length from, Length to) {
        return place.scale().exactPixels(to.minus(from)) < 1;
    }

    private static double least(FacePlace place, FaceCourse course, PlacedPiece piece) {
        return Math.min(place.scale().exactPixels(piece.to().minus(piece.from())),
                place.scale().exactPixels(course.top().minus(course.unitBottom())));
    }
}
