package org.coursewright.core.bond;

import java.util.EnumMap;
import java.util.Map;
import java.util.stream.Stream;

import org.coursewright.bond.CourseLayout;
import org.coursewright.bond.Piece;
import org.coursewright.bond.WallLayout;

/**
 * How many pieces a layout takes.
 *
 * @param whole whole units
 * @param special stocked specials
 * @param cut cut pieces
 */
public record UnitCount(long whole, long special, long cut) {

    /**
     * Counts the pieces of walls.
     *
     * @param walls the layouts, not null
     * @return how many pieces of each kind they take together
     */
    public static UnitCount of(Stream<WallLayout> walls) {
        return ofCourses(walls.flatMap(wall -> wall.courses().stream()));
    }

    /**
     * Counts the pieces of a course.
     *
     * @param course its layout, not null
     * @return how many pieces of each kind it takes
     */
    public static UnitCount of(CourseLayout course) {
        return ofCourses(Stream.of(course));
    }

    private static UnitCount ofCourses(Stream<CourseLayout> courses) {
        Map<Piece.Kind, Long> counts = new EnumMap<>(Piece.Kind.class);
        courses.flatMap(course -> course.runs().stream())
                .flatMap(run -> run.pieces().stream()).forEach(piece -> counts.merge(piece.kind(), 1L, Long::sum));
        return new UnitCount(counts.getOrDefault(Piece.Kind.WHOLE, 0L), counts.getOrDefault(Piece.Kind.SPECIAL, 0L),
                counts.getOrDefault(Piece.Kind.CUT, 0L));
    }

    /** @return all pieces together */
    public long total() {
        return whole + special + cut;
    }
}
