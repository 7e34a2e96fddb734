package org.coursewright.exchange.schedule;

import java.util.List;

import org.coursewright.exchange.remark.Remarks;
import org.coursewright.exchange.remark.Shown;

/** What can be wrong with a wall that names something of another schedule. */
final class WallChecks {

    private final Units units;
    private final Remarks remarks;

    WallChecks(Units units, Remarks remarks) {
        this.units = units;
        this.remarks = remarks;
    }

    /** Notes walls of units that nobody described. */
    void noteUnknownUnits(List<WallRow> walls) {
        for (WallRow wall : walls) {
            if (!wall.unit().isEmpty() && !units.mayName(wall.unit())) {
                remarks.error(wall.place().inColumn("unit"),
                        "There is no unit %s. Enter one of %s; or describe it in a units schedule."
                                .formatted(Shown.quoted(wall.unit()), units.marks()));
            }
        }
    }
}
