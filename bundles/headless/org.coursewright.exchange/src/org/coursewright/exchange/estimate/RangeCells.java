package org.coursewright.exchange.estimate;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

import org.coursewright.exchange.table.Cells;
import org.coursewright.exchange.table.Column;
import org.coursewright.exchange.table.NumberCell;
import org.coursewright.model.estimate.Uncertain;

/** The columns that say how far something may be off. */
final class RangeCells {

    static final List<Column> COLUMNS = List.of(Column.optional("low"), Column.optional("high"),
            Column.optional("moves_with"));

    private RangeCells() {
    }

    static void read(Cells cells, Uncertain uncertain, Book book) {
        Optional<BigDecimal> low = NumberCell.positive(cells, "low");
        Optional<BigDecimal> high = NumberCell.positive(cells, "high");
        low.ifPresent(uncertain::setLowShare);
        high.ifPresent(uncertain::setHighShare);
        if (low.filter(each -> each.compareTo(BigDecimal.ONE) > 0).isPresent()) {
            cells.wrong("low", "It is the least by what is expected: enter at most 1, such as 0.9.");
        }
        if (high.filter(each -> each.compareTo(BigDecimal.ONE) < 0).isPresent()) {
            cells.wrong("high", "It is the most by what is expected: enter at least 1, such as 1.2.");
        }
        if (!cells.text("moves_with").isEmpty()) {
            book.uncertainty(cells, "moves_with").ifPresent(uncertain::setMovesWith);
        }
    }
}
