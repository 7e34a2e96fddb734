package org.coursewright.exchange.sheet.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.coursewright.core.bond.CourseNumbers;
import org.coursewright.core.bond.UnfillableWords;
import org.coursewright.exchange.sheet.SheetWall;
import org.coursewright.exchange.sheet.layout.Table.Column;
import org.coursewright.exchange.sheet.page.TextMeasure;
import org.coursewright.measure.Length;

/** Runs that no pieces and joints fill, and why. */
final class NotFilled {

    private static final double REASON_WIDTH = 80;
    private static final double COURSES_WIDTH = 34;

    private NotFilled() {
    }

    /** What a row says of a run, but for its course. */
    private record Why(Length from, Length to, String reason) {
    }

    static Table of(SheetWall wall, SheetFormat format, TextMeasure measure) {
        Map<Why, List<Integer>> courses = new LinkedHashMap<>();
        UnfillableWords words = new UnfillableWords(format.inSentences());
        wall.layout().unfillable().forEach(run -> courses
                .computeIfAbsent(new Why(run.from(), run.to(), words.of(run)), why -> new ArrayList<>())
                .add(run.course()));
        List<List<String>> rows = new ArrayList<>();
        courses.forEach((why, numbers) -> {
            List<String> reason = Wrap.lines(why.reason(), REASON_WIDTH, TableFlow.SIZE, measure);
            List<String> inShort = Wrap.lines(CourseNumbers.of(numbers), COURSES_WIDTH, TableFlow.SIZE, measure);
            for (int i = 0; i < Math.max(reason.size(), inShort.size()); i++) {
                rows.add(List.of(cell(inShort, i), i == 0 ? format.length(why.from()) : "",
                        i == 0 ? format.length(why.to()) : "", cell(reason, i)));
            }
        });
        return new Table("Runs not filled: settle these before laying", List.of(),
                List.of(Column.left("courses"), Column.right("from"), Column.right("to"), Column.left("why")), rows);
    }

    private static String cell(List<String> lines, int index) {
        return index < lines.size() ? lines.get(index) : "";
    }
}
