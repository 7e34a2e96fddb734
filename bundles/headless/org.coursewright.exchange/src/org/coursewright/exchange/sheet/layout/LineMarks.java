package org.coursewright.exchange.sheet.layout;

import java.util.List;
import java.util.stream.Stream;

import org.coursewright.bond.CourseLayout;
import org.coursewright.exchange.sheet.SheetWall;
import org.coursewright.exchange.sheet.layout.Table.Column;
import org.coursewright.measure.Length;

/** Marks along the line and on the pole, which stand in tables where the drawing has no room for them. */
final class LineMarks {

    private LineMarks() {
    }

    /** @return the edges of all pieces of the first course, from the outer start face */
    static List<Length> alongFirstCourse(SheetWall wall) {
        return firstCourse(wall).flatMap(PlacedPiece::edges).distinct().sorted().toList();
    }

    /** @return the pieces of the first course, from start to end */
    static Stream<PlacedPiece> firstCourse(SheetWall wall) {
        return wall.layout().courses().stream().limit(1).flatMap(course -> course.runs().stream())
                .flatMap(run -> PlacedPiece.of(run).stream());
    }

    /** @return the base and the top of every course, above the base */
    static List<Length> onPole(SheetWall wall) {
        return Stream.concat(Stream.of(Length.ZERO), wall.layout().courses().stream().map(LineMarks::top)).toList();
    }

    static Length top(CourseLayout course) {
        return course.course().bottom().plus(course.course().height());
    }

    static Table lineTable(SheetWall wall, SheetFormat format) {
        List<List<String>> rows = firstCourse(wall)
                .map(piece -> List.of(format.mark(piece.from()), format.mark(piece.to()))).toList();
        return new Table("First course: marks along the line", List.of(),
                List.of(Column.right("piece from"), Column.right("to")), rows);
    }

    static Table poleTable(SheetWall wall, SheetFormat format) {
        List<List<String>> rows = wall.layout().courses().stream()
                .map(course -> List.of(String.valueOf(course.course().number()), format.mark(top(course)))).toList();
        return new Table("Story pole: tops of courses above the base", List.of(),
                List.of(Column.right("course"), Column.right("top")), rows);
    }
}
