package org.coursewright.exchange.schedule;

import java.util.List;
import java.util.Optional;

import org.coursewright.exchange.table.Cells;
import org.coursewright.exchange.table.Column;
import org.coursewright.exchange.table.LengthRange;
import org.coursewright.exchange.table.Schedule;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Bond;

/** Walls on their centre lines. */
final class WallSchedule extends Schedule<WallRow> {

    private static final String DEFAULT_STOREY = "1";

    WallSchedule() {
        super(List.of(Column.mandatory("mark"), Column.mandatory("from_x"), Column.mandatory("from_y"),
                Column.mandatory("to_x"), Column.mandatory("to_y"), Column.mandatory("unit"), Column.optional("bond"),
                Column.optional("base"), Column.mandatory("height"), Column.optional("storey"),
                Column.optional("gable"), Column.optional("move"), Column.optional("size")));
    }

    @Override
    protected WallRow row(Cells cells) {
        WallRow row = new WallRow(cells.line(), cells.mark("mark"), cells.length("from_x", LengthRange.COORDINATE),
                cells.length("from_y", LengthRange.COORDINATE), cells.length("to_x", LengthRange.COORDINATE),
                cells.length("to_y", LengthRange.COORDINATE), cells.mark("unit"),
                cells.word("bond", Bond.values(), Bond::getLiteral).orElse(Bond.STRETCHER),
                cells.optionalLength("base", LengthRange.LEVEL).orElse(Length.ZERO),
                cells.length("height", LengthRange.HEIGHT), storey(cells), gable(cells),
                ToleranceCell.read(cells, "move"), ToleranceCell.read(cells, "size"));
        if (cells.areSound() && !row.hasLength()) {
            cells.wrong("to_x", "The wall begins and ends at the same point, or within 10 mm of it. "
                    + "Correct from_x, from_y, to_x or to_y.");
        }
        return row;
    }

    private static String storey(Cells cells) {
        return cells.text("storey").isEmpty() ? DEFAULT_STOREY : cells.mark("storey");
    }

    private static Optional<Length> gable(Cells cells) {
        return cells.optionalLength("gable", LengthRange.RISE).filter(rise -> rise.signum() > 0);
    }
}
