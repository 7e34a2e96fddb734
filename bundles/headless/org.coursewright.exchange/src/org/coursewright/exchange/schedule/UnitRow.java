package org.coursewright.exchange.schedule;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

import org.coursewright.exchange.remark.Place;
import org.coursewright.exchange.table.Schedule;
import org.coursewright.measure.Length;

/**
 * A masonry unit as a schedule or the built-in catalogue has it.
 *
 * @param mass of one unit (kg), if known
 * @param shortestPiece empty to use the bond rule's
 * @param note where the size comes from, may be empty
 */
record UnitRow(Place place, String mark, Length length, Length width, Length height, Optional<BigDecimal> mass,
        List<Length> specialLengths, Optional<Length> shortestPiece, Optional<Length> cutStep, Optional<Length> kerf,
        String note) implements Schedule.Row {

    UnitRow {
        specialLengths = List.copyOf(specialLengths);
    }
}
