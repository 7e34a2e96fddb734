package org.coursewright.exchange.sheet.page;

import java.util.Objects;

/** A straight line. */
public record Stroke(Spot from, Spot to, Pen pen) implements Mark {

    public Stroke {
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(to, "to");
        Objects.requireNonNull(pen, "pen");
    }
}
