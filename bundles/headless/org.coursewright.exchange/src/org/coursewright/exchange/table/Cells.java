package org.coursewright.exchange.table;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

import org.coursewright.exchange.csv.CsvRow;
import org.coursewright.exchange.remark.Place;
import org.coursewright.exchange.remark.Remarks;
import org.coursewright.exchange.remark.Shown;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.coursewright.measure.LengthFormatException;

/**
 * The cells of one row, read as what they should be. A cell that is something else is noted and read as a stand-in;
 * {@link #areSound()} tells whether the row may be used.
 */
public final class Cells {

    private static final int LONGEST_MARK = 60;

    private final CsvRow row;
    private final ColumnMap columns;
    private final Place line;
    private final LengthFormat format;
    private final Remarks remarks;
    private final int errorsBefore;

    Cells(CsvRow row, ColumnMap columns, Place line, LengthFormat format, Remarks remarks) {
        this.row = row;
        this.columns = columns;
        this.line = line;
        this.format = format;
        this.remarks = remarks;
        this.errorsBefore = remarks.errorCount();
    }

    /** @return whether no cell of the row was found wrong so far */
    public boolean areSound() {
        return remarks.errorCount() == errorsBefore;
    }

    /** @return the line of this row */
    public Place line() {
        return line;
    }

    /** @return the cell as written */
    public String text(String column) {
        return row.cell(columns.indexOf(column));
    }

    /** @return a mark: not empty, one line, not too long */
    public String mark(String column) {
        String mark = text(column);
        if (mark.isEmpty()) {
            wrong(column, "The cell is empty. Enter a mark.");
        } else if (mark.length() > LONGEST_MARK || mark.lines().count() > 1 || mark.indexOf('\t') >= 0) {
            wrong(column, "%s is no mark: a mark is one line of at most %d characters. Shorten it."
                    .formatted(Shown.quoted(mark), LONGEST_MARK));
        }
        return mark;
    }

    /** @return a length that must be there, within the range */
    public Length length(String column, LengthRange range) {
        if (text(column).isEmpty() && columns.has(column)) {
            wrong(column, "The cell is empty. Enter a length such as %s.".formatted(example()));
        }
        return optionalLength(column, range).orElse(Length.ZERO);
    }

    /** @return a length within the range, or empty if the cell is */
    public Optional<Length> optionalLength(String column, LengthRange range) {
        String text = text(column);
        return text.isEmpty() ? Optional.empty() : Optional.of(parsed(column, text, range));
    }

    /** Reads a part of a cell as a length within the range. */
    public Length parsed(String column, String text, LengthRange range) {
        try {
            Length length = format.parse(text);
            if (!range.contains(length)) {
                wrong(column, "%s is out of range: enter %s.".formatted(Shown.quoted(text), range));
            }
            return length;
        } catch (LengthFormatException e) {
            wrong(column, e.getMessage());
            return Length.ZERO;
        }
    }

    /** @return the value whose word the cell holds, or empty if the cell is */
    public <E extends Enum<E>> Optional<E> word(String column, E[] values, Function<E, String> word) {
        String text = text(column).toLowerCase(Locale.ROOT);
        Optional<E> found = Arrays.stream(values).filter(value -> word.apply(value).equals(text)).findFirst();
        if (found.isEmpty() && !text.isEmpty()) {
            wrong(column, "%s is unknown. Enter one of %s.".formatted(Shown.quoted(text(column)),
                    Arrays.stream(values).map(word).collect(Collectors.joining(", "))));
        }
        return found;
    }

    /** Notes that a cell is wrong. */
    public void wrong(String column, String message) {
        remarks.error(line.inColumn(column), message);
    }

    /** Notes that something about a cell should be known. */
    public void doubtful(String column, String message) {
        remarks.warning(line.inColumn(column), message);
    }

    private String example() {
        return switch (format.unit()) {
            case INCH -> "12'-4 1/2\"";
            case MILLIMETRE -> "3760 mm";
        };
    }
}
