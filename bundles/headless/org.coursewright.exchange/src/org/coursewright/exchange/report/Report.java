package org.coursewright.exchange.report;

import java.util.List;
import java.util.Objects;

/**
 * Tables that belong together.
 *
 * @param title what they are about
 * @param tables at least one, the first is the one that a form with one table shows
 * @param notes sentences that belong to them: assumptions and cautions
 */
public record Report(String title, List<ReportTable> tables, List<String> notes) {

    public Report {
        Objects.requireNonNull(title, "title");
        tables = List.copyOf(tables);
        notes = List.copyOf(notes);
        if (tables.isEmpty()) {
            throw new IllegalArgumentException("The report \"%s\" has no table.".formatted(title));
        }
    }
}
