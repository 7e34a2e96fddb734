package org.coursewright.exchange.sheet.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.coursewright.bond.JointRule;
import org.coursewright.bond.WallLayout;
import org.coursewright.core.bond.UnitCount;
import org.coursewright.exchange.sheet.SheetSettings;
import org.coursewright.exchange.sheet.SheetWall;
import org.coursewright.exchange.sheet.page.Anchor;
import org.coursewright.exchange.sheet.page.Area;
import org.coursewright.exchange.sheet.page.Pen;
import org.coursewright.exchange.sheet.page.Shade;
import org.coursewright.exchange.sheet.page.TextMeasure;
import org.coursewright.measure.Length;

/** What the sheet is about, in its bottom right corner. */
final class TitleBlock {

    static final double WIDTH = 100;
    private static final double SIZE = 2.3;
    private static final double ROW = 3.3;
    private static final double PADDING = 2.5;
    private static final double WALL_SIZE = 6;
    private static final double HEADING = 12;

    private final SheetWall wall;
    private final SheetFormat format;
    private final SheetSettings settings;
    private final TextMeasure measure;

    TitleBlock(SheetWall wall, SheetFormat format, SheetSettings settings, TextMeasure measure) {
        this.wall = wall;
        this.format = format;
        this.settings = settings;
        this.measure = measure;
    }

    /** @return paper it takes from top to bottom (mm) */
    double height(int scale) {
        return HEADING + lines(scale).size() * ROW + 2 * PADDING;
    }

    void draw(Drawing drawing, Area area, int scale) {
        drawing.box(area, Pen.HEAVY, Shade.PAPER);
        double left = area.x() + PADDING;
        String name = "Wall " + wall.mark();
        double size = Math.min(WALL_SIZE, WALL_SIZE * (WIDTH - 2 * PADDING) / drawing.width(name, WALL_SIZE));
        drawing.strong(left, area.top() - PADDING - HEADING / 3, name, size);
        double y = area.top() - HEADING - PADDING;
        for (String line : lines(scale)) {
            drawing.text(left, y, line, SIZE, Anchor.START);
            y -= ROW;
        }
    }

    private List<String> lines(int scale) {
        List<String> texts = new ArrayList<>(List.of("Setting-out sheet. Project: " + wall.project(),
                "Unit: " + wall.unit(), "Bond: %s; wall %s long, %s thick".formatted(wall.bond(), format.length(wall
                        .length()), format.length(wall.thickness())),
                rule(), coursing(), counts(), laps(), runs(), scale(scale),
                "Seen from the right-hand side when walking from start to end: the outer start face is on the left.",
                "Line: %s off the face".formatted(format.length(settings.lineOffset())),
                "Hatched: cut, with length or key. Heavy outline: special. Grey: lintel or beam. Dashed: another wall."));
        if (!format.isInches()) {
            texts.add("All lengths are in millimetres.");
        }
        settings.date().ifPresent(date -> texts.add("Date: " + date));
        return texts.stream().flatMap(text -> wrapped(text)).toList();
    }

    private Stream<String> wrapped(String text) {
        return Wrap.lines(text, WIDTH - 2 * PADDING, SIZE, measure).stream();
    }

    private String rule() {
        JointRule rule = wall.face().rule();
        return "Rule: lap at least %s; head joints %s to %s, %s aimed at".formatted(format.length(rule.leastLap()),
                format.length(rule.least()), format.length(rule.most()), format.length(rule.nominal()));
    }

    private String coursing() {
        List<Length> lines = LineMarks.onPole(wall);
        if (lines.size() == 1) {
            return "Courses: none";
        }
        Length course = wall.layout().courses().get(0).course().height();
        return "Courses: %d of %s each, bed joint %s with it".formatted(lines.size() - 1, format.length(course), format
                .length(course.minus(wall.unitHeight())));
    }

    private String counts() {
        UnitCount count = UnitCount.of(Stream.of(wall.layout()));
        return "Pieces: %d whole, %d special, %d cut".formatted(count.whole(), count.special(), count.cut());
    }

    private String laps() {
        WallLayout layout = wall.layout();
        return layout.lapViolations() == 0
                ? "Laps: all kept"
                : "Laps: %d pairs of joints lap less than the rule asks".formatted(layout.lapViolations());
    }

    private String runs() {
        int count = wall.layout().unfillable().size();
        return count == 0
                ? "Runs: all filled"
                : "Runs: %d not filled, see the table; settle them before laying"
                        .formatted(count);
    }

    private String scale(int scale) {
        String text = "Scale " + Scales.describe(scale, format.unit());
        return settings.scale().filter(wanted -> wanted != scale)
                .map(wanted -> text + "; 1:%d does not fit the paper".formatted(wanted)).orElse(text);
    }
}
