package org.coursewright.exchange.schedule;

import java.util.List;

import org.coursewright.exchange.table.Cells;
import org.coursewright.exchange.table.Column;
import org.coursewright.exchange.table.LengthRange;
import org.coursewright.exchange.table.Schedule;
import org.coursewright.measure.Length;
import org.coursewright.model.building.OpeningKind;

/** Openings in walls. */
final class OpeningSchedule extends Schedule<OpeningRow> {

    OpeningSchedule() {
        super(List.of(Column.mandatory("mark"), Column.mandatory("wall"), Column.mandatory("kind"),
                Column.mandatory("offset"), Column.mandatory("width"), Column.optional("sill"),
                Column.mandatory("height"), Column.optional("lintel"), Column.optional("move"),
                Column.optional("size")));
    }

    @Override
    protected OpeningRow row(Cells cells) {
        OpeningKind kind = kind(cells);
        return new OpeningRow(cells.line(), cells.mark("mark"), cells.mark("wall"), kind,
                cells.length("offset", LengthRange.ALONG_WALL), cells.length("width", LengthRange.WIDTH),
                sill(cells, kind), cells.length("height", LengthRange.HEIGHT), LintelCell.read(cells, "lintel"),
                ToleranceCell.read(cells, "move"), ToleranceCell.read(cells, "size"));
    }

    private static OpeningKind kind(Cells cells) {
        if (cells.text("kind").isEmpty()) {
            cells.wrong("kind", "The cell is empty. Enter door, window, passage, vent, niche or other.");
        }
        return cells.word("kind", OpeningKind.values(), OpeningKind::getLiteral).orElse(OpeningKind.OTHER);
    }

    private static Length sill(Cells cells, OpeningKind kind) {
        boolean standsOnBase = kind == OpeningKind.DOOR || kind == OpeningKind.PASSAGE;
        if (!standsOnBase && cells.text("sill").isEmpty()) {
            cells.wrong("sill", "The cell is empty. Enter the sill's height above the base of the wall, 0 if none.");
        }
        return cells.optionalLength("sill", LengthRange.RISE).orElse(Length.ZERO);
    }
}
