package org.coursewright.exchange.sheet.page;

import java.util.List;

/** How a line is drawn, always in black so that it survives a copier. */
public enum Pen {
    /** Not at all. */
    NONE(0, List.of()),
    /** Hatching and leaders. */
    HAIR(0.08, List.of()),
    /** Units and tables. */
    FINE(0.15, List.of()),
    /** Outlines of walls and openings. */
    MEDIUM(0.3, List.of()),
    /** Stocked specials and the frame. */
    HEAVY(0.4, List.of()),
    /** What is not there: other walls and runs that are not filled. */
    DASHED(0.15, List.of(1.0, 0.8)),
    /** The mason's line. */
    CHAIN(0.25, List.of(4.0, 1.0, 0.6, 1.0));

    private final double width;
    private final List<Double> dashes;

    Pen(double width, List<Double> dashes) {
        this.width = width;
        this.dashes = dashes;
    }

    /** @return how thick the line is (mm) */
    public double width() {
        return width;
    }

    /** @return lengths of strokes and gaps in turn (mm), empty for a solid line */
    public List<Double> dashes() {
        return dashes;
    }
}
