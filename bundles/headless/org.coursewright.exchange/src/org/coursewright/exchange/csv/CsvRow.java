package org.coursewright.exchange.csv;

import java.util.List;

/**
 * One row of a table.
 *
 * @param line line of the file it begins in, the first is 1
 * @param cells as written, without quotation marks and surrounding blanks
 */
public record CsvRow(int line, List<String> cells) {

    public CsvRow {
        cells = List.copyOf(cells);
    }

    /** @return the cell, or an empty text if the row is shorter */
    public String cell(int index) {
        return index < cells.size() ? cells.get(index) : "";
    }
}
