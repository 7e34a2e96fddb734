package org.coursewright.exchange.sheet.layout;

import java.util.List;

import org.coursewright.exchange.sheet.SheetWall;
import org.coursewright.exchange.sheet.page.Anchor;
import org.coursewright.exchange.sheet.page.Area;
import org.coursewright.exchange.sheet.page.Mark;
import org.coursewright.exchange.sheet.page.Pen;
import org.coursewright.exchange.sheet.page.SheetPage;
import org.coursewright.exchange.sheet.page.Spot;
import org.coursewright.exchange.sheet.page.Stroke;

/**
 * The paper: A3 (ISO 216) for millimetres, 17 by 11 in (ANSI B of ASME Y14.1) for inches, both landscape.
 *
 * @param width (mm)
 * @param height (mm)
 */
record Paper(double width, double height) {

    private static final double MARGIN = 7;
    private static final double FOOT = 10.5;
    private static final double PADDING = 3;
    private static final double SIZE = 2.2;
    private static final double ROW = 3.2;
    private static final double TITLE_WIDTH = 80;

    /** Handbook cautions in short; every sheet bears them. */
    private static final List<String> CAUTION = List.of(
            "CAUTION. This sheet is no structural design: thickness, height, openings, lintels, beams and anchorage follow the local code and a licensed professional. Units as drawn are an estimate without waste:",
            "check counts and sizes on site before ordering or cutting. Dust of soil, cement and cutting harms the lungs: cut wet with a guarded saw, keep dust down, wear a respirator.");

    static Paper of(SheetFormat format) {
        return format.isInches() ? new Paper(431.8, 279.4) : new Paper(420, 297);
    }

    /** @return what lies within the frame and above the caution */
    Area inner() {
        return new Area(MARGIN, MARGIN + FOOT, width - 2 * MARGIN, height - 2 * MARGIN - FOOT);
    }

    /** @return where tables stand on pages without drawings */
    Area wholeTables() {
        Area inner = inner();
        return new Area(inner.x() + PADDING, inner.y() + PADDING, inner.width() - 2 * PADDING, inner.height() - 2
                * PADDING);
    }

    /** Finishes a page with frame, caution and its number. */
    SheetPage page(Drawing drawing, SheetWall wall, int number, int count) {
        Area inner = inner();
        drawing.marks().addAll(frame(inner));
        for (int i = 0; i < CAUTION.size(); i++) {
            drawing.text(inner.x() + PADDING, inner.y() - FOOT + PADDING + ROW * (CAUTION.size() - 1 - i) + 1, CAUTION
                    .get(i), SIZE, Anchor.START);
        }
        String title = "Wall %s, page %d of %d".formatted(wall.mark(), number, count);
        double size = SIZE * Math.min(1, TITLE_WIDTH / drawing.width(title, SIZE));
        drawing.text(inner.right() - PADDING, inner.y() - FOOT + PADDING + 1, title, size, Anchor.END);
        return new SheetPage(title, width, height, drawing.marks());
    }

    private static List<Mark> frame(Area inner) {
        double bottom = inner.y() - FOOT;
        return List.of(line(inner.x(), bottom, inner.right(), bottom), line(inner.right(), bottom, inner.right(), inner
                .top()), line(inner.right(), inner.top(), inner.x(), inner.top()), line(inner.x(), inner.top(),
                        inner
                                .x(),
                        bottom),
                line(inner.x(), inner.y(), inner.right(), inner.y()));
    }

    private static Mark line(double fromX, double fromY, double toX, double toY) {
        return new Stroke(new Spot(fromX, fromY), new Spot(toX, toY), Pen.HEAVY);
    }
}
