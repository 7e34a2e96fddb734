package org.coursewright.exchange.csv;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.stream.StreamSupport;

import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.coursewright.exchange.remark.Place;

/** Reads tables: a header, then at most {@link #MOST_ROWS} rows. Blank rows are passed over. */
public final class CsvReader {

    /** Most rows that are read. */
    public static final int MOST_ROWS = 10_000;

    /**
     * Reads a table.
     *
     * @param path the file
     * @return its header and rows
     * @throws UnreadableFileException if the file is missing, no text in UTF-8, no table, empty or too large
     */
    public CsvTable read(Path path) throws UnreadableFileException {
        String text = PlainText.read(path);
        Separator separator = Separator.usedIn(firstLine(text));
        List<CsvRow> rows = rows(Place.of(path.toString()), text, separator);
        if (rows.isEmpty()) {
            throw new UnreadableFileException(Place.of(path.toString()),
                    "The file is empty. Its first line must name the columns.");
        }
        return new CsvTable(path.toString(), separator, rows.get(0), rows.subList(1, rows.size()));
    }

    private static String firstLine(String text) {
        return text.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
    }

    private static List<CsvRow> rows(Place file, String text, Separator separator) throws UnreadableFileException {
        CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(separator.character()).setIgnoreEmptyLines(false)
                .get();
        List<CsvRow> rows = new ArrayList<>();
        int line = 1;
        try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
            for (Iterator<CSVRecord> records = parser.iterator(); records.hasNext();) {
                CsvRow row = row(line, records.next());
                line = (int) parser.getCurrentLineNumber() + 1;
                if (!row.cells().stream().allMatch(String::isEmpty)) {
                    rows.add(row);
                }
                if (rows.size() > MOST_ROWS + 1) {
                    throw new UnreadableFileException(file.atLine(row.line()),
                            "The table has more than 10,000 rows, more than any schedule. Split it.");
                }
            }
        } catch (IOException | UncheckedIOException e) {
            throw new UnreadableFileException(file.atLine(line),
                    "The row is broken: a quotation mark is left open or stands before other text. "
                            + "Close it, or double it where it is meant as inches.",
                    e);
        }
        return rows;
    }

    private static CsvRow row(int line, CSVRecord record) {
        return new CsvRow(line, StreamSupport.stream(record.spliterator(), false).map(String::strip).toList());
    }
}
