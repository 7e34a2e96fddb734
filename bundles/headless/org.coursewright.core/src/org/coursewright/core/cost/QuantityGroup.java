package org.coursewright.core.cost;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.coursewright.core.takeoff.TakeoffLine;
import org.coursewright.measure.Quantity;

/**
 * Rows that belong together.
 *
 * @param title of the group
 * @param rows at least one
 * @param total of all rows, if they count the same in the same unit
 */
public record QuantityGroup(String title, List<QuantityRow> rows, Optional<Quantity> total) {

    public QuantityGroup {
        Objects.requireNonNull(title, "title");
        rows = List.copyOf(rows);
        Objects.requireNonNull(total, "total");
    }

    static QuantityGroup of(String title, List<QuantityRow> rows) {
        boolean adds = rows.stream().allMatch(rows.get(0)::addsUpWith);
        return new QuantityGroup(title, rows, adds
                ? rows.stream().map(QuantityRow::line).map(TakeoffLine::quantity).reduce(Quantity::plus)
                : Optional.empty());
    }
}
