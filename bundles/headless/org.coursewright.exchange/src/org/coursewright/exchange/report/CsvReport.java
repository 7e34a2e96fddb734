package org.coursewright.exchange.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** The first table of a report as comma-separated values (RFC 4180) in UTF-8. */
final class CsvReport {

    private CsvReport() {
    }

    static byte[] bytes(Report report) {
        StringBuilder text = new StringBuilder();
        ReportTable table = report.tables().get(0);
        try (CSVPrinter printer = new CSVPrinter(text, CSVFormat.RFC4180)) {
            printer.printRecord(table.columns());
            for (List<ReportTable.Cell> row : table.rows()) {
                printer.printRecord(row.stream().map(CsvReport::harmless).toList());
            }
        } catch (IOException e) {
            throw new UncheckedIOException("A text in memory cannot be written.", e);
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    /** A spreadsheet must not take somebody's text for a formula. */
    private static String harmless(ReportTable.Cell cell) {
        boolean formula = cell.number().isEmpty() && !cell.text().isEmpty() && "=+-@\t\r".indexOf(cell.text().charAt(
                0)) >= 0;
        return formula ? "'" + cell.text() : cell.text();
    }
}
