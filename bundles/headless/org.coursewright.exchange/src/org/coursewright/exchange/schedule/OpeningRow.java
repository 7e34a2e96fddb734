package org.coursewright.exchange.schedule;

import org.coursewright.exchange.remark.Place;
import org.coursewright.exchange.table.Schedule;
import org.coursewright.measure.Length;
import org.coursewright.model.building.OpeningKind;

/**
 * An opening as the schedule has it.
 *
 * @param offset from the wall's outer start face to the near jamb
 * @param sill above the wall's base
 * @param move how far it may be proposed to move, either way
 * @param size by how much more or less wide it may be proposed
 */
record OpeningRow(Place place, String mark, String wall, OpeningKind kind, Length offset, Length width, Length sill,
        Length height, LintelCell lintel, Length move, Length size) implements Schedule.Row {
}
