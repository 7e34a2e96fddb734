package org.coursewright.exchange.report;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A table.
 *
 * @param name short, at most 31 characters without any of {@code []:*?/\}, as spreadsheets want it
 * @param columns their titles
 * @param rows as wide as the columns
 */
public record ReportTable(String name, List<String> columns, List<List<Cell>> rows) {

    public ReportTable {
        Objects.requireNonNull(name, "name");
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
        int width = columns.size();
        if (rows.stream().anyMatch(row -> row.size() != width)) {
            throw new IllegalArgumentException("A row of table \"%s\" is not as wide as its header.".formatted(name));
        }
    }

    /**
     * One cell.
     *
     * @param text for reading
     * @param number the same for reckoning, if it is one
     */
    public record Cell(String text, Optional<BigDecimal> number) {

        public Cell {
            Objects.requireNonNull(text, "text");
            Objects.requireNonNull(number, "number");
        }

        /** @return a cell of text */
        public static Cell of(String text) {
            return new Cell(text, Optional.empty());
        }

        /** @return a number, shown with the decimals it has */
        public static Cell of(BigDecimal number) {
            return new Cell(number.toPlainString(), Optional.of(number));
        }

        /** @return a whole number */
        public static Cell of(long number) {
            return of(BigDecimal.valueOf(number));
        }
    }
}
