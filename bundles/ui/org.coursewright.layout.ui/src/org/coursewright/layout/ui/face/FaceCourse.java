package org.coursewright.layout.ui.face;

import java.util.List;
import java.util.Optional;

import org.coursewright.bond.Course;
import org.coursewright.bond.CourseLayout;
import org.coursewright.bond.Run;
import org.coursewright.measure.Length;

/**
 * One course, ready to be drawn.
 *
 * @param course its lines
 * @param unitBottom where its units stand above the wall's base, on the bed joint
 * @param runs from start to end
 * @param pieces from start to end
 */
public record FaceCourse(Course course, Length unitBottom, List<Run> runs, List<PlacedPiece> pieces) {

    /**
     * @param layout of the course
     * @param unitHeight of its units
     * @return the course, ready to be drawn
     */
    public static FaceCourse of(CourseLayout layout, Length unitHeight) {
        Course course = layout.course();
        List<PlacedPiece> pieces = layout.runs().stream().map(run -> new PlacedRun(course.number(), run))
                .flatMap(run -> run.pieces().stream()).toList();
        return new FaceCourse(course, top(course).minus(unitHeight), layout.runs(), pieces);
    }

    /** @return top of the course above the wall's base */
    public Length top() {
        return top(course);
    }

    private static Length top(Course course) {
        return course.bottom().plus(course.height());
    }

    /** @return whether the wall's rake cuts this course */
    public boolean isRaked() {
        return course.topFrom().isGreaterThan(course.from()) || course.topTo().isLessThan(course.to());
    }

    /**
     * @param along the wall
     * @return index of the first piece that ends after it, the number of pieces if none does
     */
    public int firstEndingAfter(Length along) {
        int low = 0;
        int high = pieces.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (pieces.get(middle).to().isGreaterThan(along)) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    /**
     * @param along the wall
     * @return the piece there, empty at a joint or where there is none
     */
    public Optional<PlacedPiece> pieceAt(Length along) {
        int index = firstEndingAfter(along);
        return index < pieces.size() && !along.isLessThan(pieces.get(index).from())
                ? Optional.of(pieces.get(index))
                : Optional.empty();
    }
}
