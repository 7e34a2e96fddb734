package org.coursewright.exchange.sheet.layout;

import java.util.List;

import org.coursewright.exchange.sheet.page.Anchor;

/**
 * A table.
 *
 * @param title over it
 * @param columns from left to right
 * @param rows one cell for each column; a cell that continues the one above is in a row of its own
 * @param note under the title, one line each
 */
record Table(String title, List<String> note, List<Column> columns, List<List<String>> rows) {

    /** A column: its heading, and where its cells are aligned. */
    record Column(String heading, Anchor align) {

        static Column left(String heading) {
            return new Column(heading, Anchor.START);
        }

        static Column right(String heading) {
            return new Column(heading, Anchor.END);
        }
    }

    Table {
        note = List.copyOf(note);
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
    }
}
