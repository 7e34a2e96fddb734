package org.coursewright.exchange.sheet.page;

import java.util.List;
import java.util.Objects;

/**
 * A closed outline.
 *
 * @param corners in order, at least three
 * @param outline how it is drawn
 * @param fill what it is filled with
 */
public record Shape(List<Spot> corners, Pen outline, Shade fill) implements Mark {

    public Shape {
        corners = List.copyOf(corners);
        Objects.requireNonNull(outline, "outline");
        Objects.requireNonNull(fill, "fill");
    }
}
