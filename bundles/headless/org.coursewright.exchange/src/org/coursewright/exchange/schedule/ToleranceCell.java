package org.coursewright.exchange.schedule;

import org.coursewright.exchange.table.Cells;
import org.coursewright.exchange.table.LengthRange;
import org.coursewright.measure.Length;

/** How far something may be proposed to change, either way. */
final class ToleranceCell {

    private ToleranceCell() {
    }

    /** A tolerance may be written with the sign it always means; an empty cell is none. */
    static Length read(Cells cells, String column) {
        String text = cells.text(column).replaceFirst("^(\u00B1|\\+/-|\\+-)\\s*", "");
        return text.isEmpty() ? Length.ZERO : cells.parsed(column, text, LengthRange.ALONG_WALL);
    }
}
