package org.coursewright.exchange.schedule;

import java.util.List;

import org.coursewright.exchange.remark.Remarks;
import org.coursewright.exchange.remark.Shown;
import org.coursewright.exchange.table.Rows;

/** What can be wrong with an opening that names something of another schedule. */
final class OpeningChecks {

    private final Remarks remarks;

    OpeningChecks(Remarks remarks) {
        this.remarks = remarks;
    }

    /** Notes openings in walls that the schedule of walls does not name. */
    void noteUnknownWalls(List<OpeningRow> openings, Rows<WallRow> walls) {
        for (OpeningRow opening : openings) {
            if (!opening.wall().isEmpty() && !walls.mayName(opening.wall())) {
                remarks.error(opening.place().inColumn("wall"),
                        "There is no wall %s. Enter the mark of a wall in the schedule of walls."
                                .formatted(Shown.quoted(opening.wall())));
            }
        }
    }
}
