package org.coursewright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

import org.coursewright.exchange.report.Report;
import org.coursewright.exchange.report.ReportForm;

import picocli.CommandLine.Option;

/** The option that writes a result to a file for spreadsheets or paper besides. */
public final class ReportOption {

    @Option(names = "--out", paramLabel = "FILE", //
            description = "Write it to this file too: .csv (lines only), .xlsx or .pdf. An older file is replaced.")
    private Path file;

    /**
     * Refuses a file that cannot be meant, before anything is computed.
     *
     * @throws BadInputException if its ending stands for no form, or its folder is missing
     */
    public void check() throws BadInputException {
        if (file == null) {
            return;
        }
        if (ReportForm.of(file).isEmpty()) {
            throw new BadInputException("--out: %s ends in none of .csv, .xlsx and .pdf. Choose one.".formatted(file));
        }
        if (!Files.isDirectory(Optional.ofNullable(file.toAbsolutePath().getParent()).orElse(file))) {
            throw new BadInputException("--out: There is no folder for %s. Make it first.".formatted(file));
        }
        if (Files.isDirectory(file)) {
            throw new BadInputException("--out: %s is a folder. Name a file in it.".formatted(file));
        }
    }

    /**
     * Writes the report if a file was named.
     *
     * @param report to be written
     * @throws BadInputException if it cannot be written
     */
    public void write(Report report) throws BadInputException {
        if (file == null) {
            return;
        }
        try {
            ReportForm.of(file).orElseThrow().write(report, file);
        } catch (IOException e) {
            throw new BadInputException("--out: %s cannot be written (%s). Check its folder and permissions.".formatted(
                    file, e.getClass().getSimpleName()));
        }
    }
}
