package org.coursewright.exchange.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;

/** The forms that a report is written in. */
public enum ReportForm {

    /** Comma-separated values, the first table only. */
    CSV,
    /** A workbook for spreadsheets. */
    XLSX,
    /** Paper. */
    PDF;

    /**
     * @param file any name
     * @return the form that its ending stands for, if any does
     */
    public static Optional<ReportForm> of(Path file) {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        return Arrays.stream(values()).filter(form -> name.endsWith("." + form.name().toLowerCase(Locale.ROOT)))
                .findFirst();
    }

    /**
     * @param report to be written
     * @return the content of its file
     * @throws IOException if the type for paper is missing from this installation
     */
    public byte[] bytes(Report report) throws IOException {
        return switch (this) {
            case CSV -> CsvReport.bytes(report);
            case XLSX -> XlsxReport.bytes(report);
            case PDF -> PdfReport.bytes(report);
        };
    }

    /**
     * Writes a report; an older file is replaced as a whole.
     *
     * @param report to be written
     * @param file where to
     * @throws IOException if it cannot be written; an older file is then untouched
     */
    public void write(Report report, Path file) throws IOException {
        Path beside = file.resolveSibling(".%s.%s.tmp".formatted(file.getFileName(), UUID.randomUUID()));
        try {
            Files.write(beside, bytes(report));
            Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(beside);
        }
    }
}
