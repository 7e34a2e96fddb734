package org.coursewright.exchange.sheet.page;

import java.util.Objects;

/**
 * A line of text.
 *
 * @param at where it is anchored, half way up its capitals
 * @param text what it says
 * @param size of the type (mm)
 * @param anchor which part of it lies at {@code at}
 * @param turned whether it reads upwards
 * @param strong whether it is printed bold
 */
public record Label(Spot at, String text, double size, Anchor anchor, boolean turned, boolean strong) implements Mark {

    /** Half the height of a capital letter, as a part of the size. */
    public static final double HALF_CAPITAL = 0.36;
    private static final double ABOVE = 0.40;
    private static final double BELOW = 0.57;

    public Label {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(anchor, "anchor");
    }

    /** @return the paper it takes, parts of letters that hang below the line included */
    public Area area(TextMeasure measure) {
        double width = measure.width(text, size);
        double before = width * anchor.part();
        return turned
                ? new Area(at.x() - ABOVE * size, at.y() - before, (ABOVE + BELOW) * size, width)
                : new Area(at.x() - before, at.y() - BELOW * size, width, (ABOVE + BELOW) * size);
    }
}
