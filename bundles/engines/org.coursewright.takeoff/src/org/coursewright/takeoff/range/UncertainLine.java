package org.coursewright.takeoff.range;

import java.util.Objects;

/**
 * A line whose cost is uncertain.
 *
 * @param id unique among the lines
 * @param source of the uncertainty, such as a supplier, a crew or the weather; lines of one source move together
 * @param spread what it may cost
 */
public record UncertainLine(String id, String source, Spread spread) {

    public UncertainLine {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(spread, "spread");
    }
}
