package org.coursewright.exchange.table;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import org.coursewright.exchange.csv.CsvReader;
import org.coursewright.exchange.csv.CsvRow;
import org.coursewright.exchange.csv.CsvTable;
import org.coursewright.exchange.csv.UnreadableFileException;
import org.coursewright.exchange.remark.Place;
import org.coursewright.exchange.remark.Remarks;
import org.coursewright.exchange.remark.Shown;
import org.coursewright.measure.LengthFormat;

/**
 * A kind of schedule: its columns and what a row of it means.
 *
 * @param <R> what a row is read as
 */
public abstract class Schedule<R extends Schedule.Row> {

    /** What every row has. */
    public interface Row {
        /** @return mark, unique among the rows of a schedule, capital letters apart */
        String mark();

        /** @return where it stands */
        Place place();
    }

    private final List<Column> columns;

    protected Schedule(List<Column> columns) {
        this.columns = columns;
    }

    /** Reads one row; notes what is wrong with it. */
    protected abstract R row(Cells cells);

    /** @return the column that holds what tells rows apart */
    protected String markColumn() {
        return "mark";
    }

    /**
     * Reads a table and notes everything that is wrong with it.
     *
     * @param path the file
     * @param format what a bare number means
     * @param remarks where problems are noted
     * @return its rows; those with a bad cell are not sound
     */
    public final Rows<R> read(Path path, LengthFormat format, Remarks remarks) {
        try {
            int before = remarks.errorCount();
            CsvTable table = new CsvReader().read(path);
            ColumnMap map = ColumnMap.of(table, columns, remarks);
            return remarks.errorCount() > before ? Rows.unreadable() : rows(table, map, format, remarks);
        } catch (UnreadableFileException e) {
            remarks.error(e.remark().place(), e.remark().message());
            return Rows.unreadable();
        }
    }

    private Rows<R> rows(CsvTable table, ColumnMap map, LengthFormat format, Remarks remarks) {
        int width = table.header().cells().size();
        Map<String, Integer> lines = new HashMap<>();
        List<R> all = new ArrayList<>();
        List<R> sound = new ArrayList<>();
        for (CsvRow row : table.rows()) {
            Place line = Place.of(table.file()).atLine(row.line());
            Cells cells = new Cells(row, map, line, format, remarks);
            if (row.cells().size() > width && !row.cell(width).isEmpty()) {
                remarks.error(line, "The row has %d cells, the header names %d columns. Put a cell that contains %s "
                        .formatted(row.cells().size(), width, table.separator().plural()) + "in quotation marks.");
                continue;
            }
            R read = row(cells);
            all.add(read);
            noteDuplicate(cells, lines, row.line(), read.mark());
            if (cells.areSound()) {
                sound.add(read);
            }
        }
        return Rows.of(all, sound);
    }

    private void noteDuplicate(Cells cells, Map<String, Integer> lines, int line, String mark) {
        Integer first = mark.isEmpty() ? null : lines.putIfAbsent(key(mark), line);
        Optional.ofNullable(first).ifPresent(earlier -> cells.wrong(markColumn(),
                "%s is already the mark of line %d. Give one of them another mark.".formatted(Shown.quoted(mark),
                        earlier)));
    }

    /** @return what two marks must differ in */
    public static String key(String mark) {
        return mark.toLowerCase(Locale.ROOT);
    }
}
