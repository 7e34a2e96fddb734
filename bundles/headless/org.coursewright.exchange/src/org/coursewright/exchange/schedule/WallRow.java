package org.coursewright.exchange.schedule;

import java.util.Optional;

import org.coursewright.exchange.remark.Place;
import org.coursewright.exchange.table.Schedule;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Bond;

/**
 * A wall as the schedule has it.
 *
 * @param gable rise of the apex at mid-length above {@code height}, empty for a level top
 * @param move how far it may be proposed to move sideways, either way
 * @param size by how much longer or shorter it may be proposed where it ends in the open
 */
record WallRow(Place place, String mark, Length fromX, Length fromY, Length toX, Length toY, String unit, Bond bond,
        Length base, Length height, String storey, Optional<Length> gable, Length move,
        Length size) implements Schedule.Row {

    /** Shorter walls are slips of the pen. */
    private static final Length LEAST_REACH = Length.ofMillimetres(10);

    boolean hasLength() {
        return !toX.minus(fromX).abs().isLessThan(LEAST_REACH) || !toY.minus(fromY).abs().isLessThan(LEAST_REACH);
    }

    Length thickness(UnitRow unitRow) {
        return switch (bond) {
            case STRETCHER -> unitRow.width();
            case HEADER -> unitRow.length();
        };
    }
}
