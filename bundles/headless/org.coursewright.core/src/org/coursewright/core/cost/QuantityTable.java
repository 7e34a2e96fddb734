package org.coursewright.core.cost;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.coursewright.core.finding.Finding;
import org.coursewright.core.takeoff.LineTitle;
import org.coursewright.core.takeoff.TakeoffOutcome;

/**
 * Everything that a building takes in one table: the lines of the take-off, then the resources.
 *
 * @param takeoff what the walls take
 * @param resources what all work takes
 * @param rows of both
 */
public record QuantityTable(TakeoffOutcome takeoff, ResourceTakeoff resources, List<QuantityRow> rows) {

    public QuantityTable {
        rows = List.copyOf(rows);
    }

    static QuantityTable of(TakeoffOutcome takeoff, ResourceTakeoff resources) {
        return new QuantityTable(takeoff, resources, Stream.concat(takeoff.lines().stream().map(line -> new QuantityRow(
                line.item(), LineTitle.of(line.formula()), Optional.empty(), line)),
                resources.lines().stream().map(line -> new QuantityRow(line.resource(), line.work().words(), Optional
                        .of(line.element()), line.amount())))
                .toList());
    }

    /** @return what could not be laid or counted */
    public List<Finding> findings() {
        return Stream.concat(takeoff.findings().stream(), resources.findings().stream()).distinct().toList();
    }
}
