package org.coursewright.exchange.schedule;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.coursewright.exchange.remark.Remarks;
import org.coursewright.exchange.remark.Shown;

/** What can be wrong with openings that are each sound by themselves. */
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

    /** Notes openings that overlap another one of the same wall. */
    void noteOverlaps(List<OpeningRow> openings) {
        Map<String, List<OpeningRow>> earlier = new HashMap<>();
        for (OpeningRow opening : openings) {
            List<OpeningRow> sameWall = earlier.computeIfAbsent(Schedule.key(opening.wall()), key -> new ArrayList<>());
            sameWall.stream().filter(opening::overlaps).findFirst().ifPresent(other -> remarks.error(
                    opening.place().inColumn("offset"),
                    "Opening %s overlaps opening %s (line %d) in wall %s. Move one of them or make it smaller."
                            .formatted(opening.mark(), other.mark(), other.place().line().orElseThrow(),
                                    opening.wall())));
            sameWall.add(opening);
        }
    }
}
