package org.coursewright.exchange.schedule;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.coursewright.exchange.table.Cells;
import org.coursewright.exchange.table.Column;
import org.coursewright.exchange.table.LengthRange;
import org.coursewright.exchange.table.Schedule;
import org.coursewright.measure.DisplayUnit;
import org.coursewright.measure.Length;

/** Masonry units. */
final class UnitSchedule extends Schedule<UnitRow> {

    private final DisplayUnit display;

    UnitSchedule(DisplayUnit display) {
        super(List.of(Column.mandatory("mark"), Column.mandatory("length"), Column.mandatory("width"),
                Column.mandatory("height"), Column.optional("mass"), Column.optional("special_lengths"),
                Column.optional("shortest_piece"), Column.optional("cut_step"), Column.optional("kerf")));
        this.display = display;
    }

    @Override
    protected UnitRow row(Cells cells) {
        UnitRow row = new UnitRow(cells.line(), cells.mark("mark"), cells.length("length", LengthRange.UNIT_SIDE),
                cells.length("width", LengthRange.UNIT_SIDE), cells.length("height", LengthRange.UNIT_SIDE),
                new MassCell(display).read(cells), specialLengths(cells),
                cells.optionalLength("shortest_piece", LengthRange.PIECE),
                cells.optionalLength("cut_step", LengthRange.CUT_STEP),
                cells.optionalLength("kerf", LengthRange.KERF), "");
        if (cells.areSound()) {
            checkParts(cells, row);
        }
        return row;
    }

    private static void checkParts(Cells cells, UnitRow row) {
        if (row.length().isLessThan(row.width())) {
            cells.wrong("width", "The unit is wider than it is long. Enter the longer side in plan as its length.");
        }
        if (row.specialLengths().stream().anyMatch(special -> !special.isLessThan(row.length()))) {
            cells.wrong("special_lengths",
                    "A special is as long as the whole unit or longer. Enter shorter lengths only.");
        }
        checkAtMostLength(cells, row, "shortest_piece", row.shortestPiece());
        checkAtMostLength(cells, row, "cut_step", row.cutStep());
    }

    private static void checkAtMostLength(Cells cells, UnitRow row, String column, Optional<Length> part) {
        if (part.filter(row.length()::isLessThan).isPresent()) {
            cells.wrong(column, "It is longer than the unit. Enter at most the unit's length.");
        }
    }

    /** A blank cannot separate lengths, because it stands inside {@code 4 1/2}. */
    private static List<Length> specialLengths(Cells cells) {
        return Arrays.stream(cells.text("special_lengths").split("[;|]", -1)).map(String::strip)
                .filter(part -> !part.isEmpty()).limit(50)
                .map(part -> cells.parsed("special_lengths", part, LengthRange.PIECE)).distinct().sorted().toList();
    }
}
