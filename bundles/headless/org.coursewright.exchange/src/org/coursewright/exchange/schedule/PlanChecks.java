package org.coursewright.exchange.schedule;

import java.util.List;
import java.util.Optional;

import org.coursewright.core.geometry.Crossing;
import org.coursewright.exchange.remark.Remarks;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;

/** What can be wrong with walls and openings where they lie in plan; needs every wall to be sound. */
final class PlanChecks {

    private final Plan plan;
    private final LengthFormat format;
    private final Remarks remarks;

    PlanChecks(Plan plan, LengthFormat format, Remarks remarks) {
        this.plan = plan;
        this.format = format;
        this.remarks = remarks;
    }

    /** Notes walls of one storey that cross. */
    void noteCrossings(Rows<WallRow> walls) {
        for (Crossing crossing : plan.crossings()) {
            walls.find(crossing.second()).ifPresent(wall -> remarks.error(wall.place(), message(crossing)));
        }
    }

    private String message(Crossing crossing) {
        return "Wall %s %s wall %s at x %s, y %s. %s".formatted(crossing.second(), switch (crossing.kind()) {
            case CROSS -> "crosses";
            case OVERLAP -> "lies in";
        }, crossing.first(), format.format(crossing.x()), format.format(crossing.y()),
                "Let one of them end at the other, or divide one there into two walls.");
    }

    /** Notes openings that reach beyond an end or the top of their wall. */
    void noteBeyondWall(List<OpeningRow> openings, Rows<WallRow> walls) {
        for (OpeningRow opening : openings) {
            walls.find(opening.wall()).ifPresent(wall -> check(opening, wall));
        }
    }

    private void check(OpeningRow opening, WallRow wall) {
        Length length = plan.outerLength(wall);
        if (opening.farJamb().isGreaterThan(length)) {
            remarks.error(opening.place().inColumn("offset"),
                    "Opening %s ends %s along wall %s, which is only %s long. Move it or make it narrower.".formatted(
                            opening.mark(), format.format(opening.farJamb()), wall.mark(), format.format(length)));
            return;
        }
        Length top = topOver(opening, wall, length);
        if (opening.head().isGreaterThan(top)) {
            remarks.error(opening.place().inColumn("height"),
                    "The head of opening %s is at %s, but wall %s is only %s high there. Lower it or make it less high."
                            .formatted(opening.mark(), format.format(opening.head()), wall.mark(), format.format(top)));
        }
    }

    /** A gable is lowest over an opening at one of the jambs, because it rises to one peak. */
    private static Length topOver(OpeningRow opening, WallRow wall, Length length) {
        Optional<Length> rise = wall.gable();
        if (rise.isEmpty()) {
            return wall.height();
        }
        Length nearest = least(opening.offset(), length.minus(opening.farJamb()));
        long part = Math.multiplyExact(rise.get().units(), nearest.units()) * 2 / length.units();
        return wall.height().plus(Length.ofUnits(Math.min(part, rise.get().units())));
    }

    private static Length least(Length one, Length other) {
        return one.isLessThan(other) ? one : other;
    }
}
