package org.coursewright.exchange.estimate;

import java.util.stream.Stream;

import org.coursewright.exchange.table.Cells;
import org.coursewright.exchange.table.Column;
import org.coursewright.exchange.table.Schedule;
import org.coursewright.model.project.Marked;

/**
 * A table each of whose rows is one element with a mark.
 *
 * @param <E> type of the elements
 */
abstract class MarkedTable<E extends Marked> extends Schedule<Made<E>> {

    /** @param columns all but that of the mark, which is the first */
    MarkedTable(Column... columns) {
        super(Stream.concat(Stream.of(Column.mandatory("mark")), Stream.of(columns)).toList());
    }

    /** Makes an element with nothing set. */
    abstract E create();

    /** Sets everything but the mark, and keeps the element for tables that name it. */
    abstract void fill(Cells cells, E element);

    @Override
    protected final Made<E> row(Cells cells) {
        E element = create();
        element.setMark(cells.mark("mark"));
        fill(cells, element);
        return new Made<>(cells.line(), element.getMark(), element);
    }
}
