package org.coursewright.exchange.remark;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Where in a file something was found.
 *
 * @param file name of the file as the person gave it
 * @param line line of the file, the first is 1, or empty for the whole file
 * @param column name of the column, or empty for the whole line
 */
public record Place(String file, OptionalInt line, Optional<String> column) {

    public Place {
        Objects.requireNonNull(file, "file");
        Objects.requireNonNull(line, "line");
        Objects.requireNonNull(column, "column");
    }

    /** @return the whole file */
    public static Place of(String file) {
        return new Place(file, OptionalInt.empty(), Optional.empty());
    }

    /** @return a line of this file */
    public Place atLine(int number) {
        return new Place(file, OptionalInt.of(number), Optional.empty());
    }

    /** @return a column of this line */
    public Place inColumn(String name) {
        return new Place(file, line, Optional.of(name));
    }

    /** @return the place as people say it, such as {@code walls.csv, line 4, column from_x} */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder(file);
        line.ifPresent(number -> text.append(", line ").append(number));
        column.ifPresent(name -> text.append(", column ").append(name));
        return text.toString();
    }
}
