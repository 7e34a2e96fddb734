package org.coursewright.exchange.sheet.layout;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;

import org.coursewright.bond.CourseLayout;
import org.coursewright.bond.Piece;
import org.coursewright.bond.Run;
import org.coursewright.core.bond.CourseNumbers;
import org.coursewright.exchange.sheet.SheetWall;
import org.coursewright.exchange.sheet.layout.Table.Column;
import org.coursewright.exchange.sheet.page.TextMeasure;
import org.coursewright.measure.Length;

/** The joint of every run; courses that are alike share a row. */
final class JointGauge {

    private static final double COURSES_WIDTH = 34;

    private final SheetFormat format;
    private final TextMeasure measure;

    JointGauge(SheetFormat format, TextMeasure measure) {
        this.format = format;
        this.measure = measure;
    }

    /** What a row says of a run, but for its course. */
    private record Gauge(Length from, Length to, String pieces, String count, String joint) {
    }

    Table of(SheetWall wall) {
        Map<Gauge, List<Integer>> courses = new LinkedHashMap<>();
        for (CourseLayout course : wall.layout().courses()) {
            course.runs().forEach(run -> courses.computeIfAbsent(gauge(run), gauge -> new ArrayList<>())
                    .add(course.course().number()));
        }
        List<List<String>> rows = new ArrayList<>();
        courses.forEach((gauge, numbers) -> add(rows, gauge, CourseNumbers.of(numbers)));
        return new Table("Joint gauge of every run",
                List.of("w whole, s special, c cut. Positions are from the outer start face."),
                List.of(Column.left("courses"), Column.right("from"), Column.right("to"), Column.left("pieces"),
                        Column.right("joints"), Column.right("each")),
                rows);
    }

    private Gauge gauge(Run run) {
        return new Gauge(run.from(), run.to(), pieces(run), String.valueOf(run.jointCount()),
                run.joint().map(format::joint).orElse("–"));
    }

    private void add(List<List<String>> rows, Gauge gauge, String courses) {
        List<String> lines = Wrap.lines(courses, COURSES_WIDTH, TableFlow.SIZE, measure);
        rows.add(List.of(lines.get(0), format.length(gauge.from()), format.length(gauge.to()), gauge.pieces(), gauge
                .count(), gauge.joint()));
        lines.stream().skip(1).forEach(line -> rows.add(List.of(line, "", "", "", "", "")));
    }

    private static String pieces(Run run) {
        Map<Piece.Kind, Integer> counts = new EnumMap<>(Piece.Kind.class);
        run.pieces().forEach(piece -> counts.merge(piece.kind(), 1, Integer::sum));
        StringJoiner text = new StringJoiner(" + ");
        counts.forEach((kind, count) -> text.add(count + switch (kind) {
            case WHOLE -> "w";
            case SPECIAL -> "s";
            case CUT -> "c";
        }));
        return text.toString();
    }
}
