package org.coursewright.exchange.csv;

import java.util.List;
import java.util.Objects;

/**
 * A table as it stands in a file.
 *
 * @param file name of the file as the person gave it
 * @param separator what separates its cells
 * @param header the first row that is not blank
 * @param rows the others that are not blank
 */
public record CsvTable(String file, Separator separator, CsvRow header, List<CsvRow> rows) {

    public CsvTable {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(separator, "separator");
        Objects.requireNonNull(header, "header");
        rows = List.copyOf(rows);
    }
}
