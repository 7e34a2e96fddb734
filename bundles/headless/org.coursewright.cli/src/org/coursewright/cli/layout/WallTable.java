package org.coursewright.cli.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.coursewright.bond.CourseLayout;
import org.coursewright.bond.Piece;
import org.coursewright.bond.Run;
import org.coursewright.bond.RunEnd;
import org.coursewright.bond.UnfillableRun;
import org.coursewright.cli.layout.LayResult.LaidWall;
import org.coursewright.core.bond.UnfillableWords;
import org.coursewright.core.bond.UnitCount;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.coursewright.measure.LengthRatio;

/** One wall course by course, as it is laid, from the bottom up. */
final class WallTable {

    private final LayResult result;
    private final LengthFormat format;
    private final List<String> lines = new ArrayList<>();

    WallTable(LayResult result, LengthFormat format) {
        this.result = result;
        this.format = format;
    }

    String text() {
        result.walls().forEach(this::add);
        return String.join("\n", lines);
    }

    private void add(LaidWall wall) {
        lines.add("Wall %s, %s long, courses from the bottom up; | is a head joint, c a cut piece, s a special."
                .formatted(wall.face().mark(), format.format(wall.face().length())));
        for (CourseLayout course : wall.layout().courses()) {
            lines.add("%3d at %s".formatted(course.course().number(), format.format(course.course().bottom())));
            course.runs().forEach(this::add);
            wall.layout().unfillable().stream().filter(run -> run.course() == course.course().number())
                    .forEach(this::add);
        }
        lines.addAll(new CutTable(format, result.meetings()).lines(wall));
        UnitCount count = wall.count();
        lines.add("%d whole, %d special, %d cut; %d laps short.".formatted(count.whole(), count.special(),
                count.cut(), wall.layout().lapViolations()));
    }

    private void add(Run run) {
        String joint = run.joint().map(width -> ", joints " + shown(width)).orElse("");
        String pieces = run.pieces().stream().map(this::shown)
                .collect(Collectors.joining(" | ", mark(run.startsWith()), markAtEnd(run.endsWith())));
        lines.add("      %s to %s%s: %s".formatted(format.format(run.from()), format.format(run.to()), joint, pieces));
    }

    private void add(UnfillableRun run) {
        lines.add("      %s to %s: not filled. %s".formatted(format.format(run.from()), format.format(run.to()),
                new UnfillableWords(format).of(run)));
    }

    /** Rounded to the nearest 1/320 mm, far finer than anybody lays. */
    private String shown(LengthRatio joint) {
        return format
                .format(Length.ofUnits(Math.floorDiv(2 * joint.total().units() + joint.count(), 2L * joint.count())));
    }

    private String shown(Piece piece) {
        return format.format(piece.length()) + switch (piece.kind()) {
            case WHOLE -> "";
            case SPECIAL -> " s";
            case CUT -> " c";
        };
    }

    private static String mark(RunEnd end) {
        return end == RunEnd.JOINT ? "| " : "";
    }

    private static String markAtEnd(RunEnd end) {
        return end == RunEnd.JOINT ? " |" : "";
    }
}
