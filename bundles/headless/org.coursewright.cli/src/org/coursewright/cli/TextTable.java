package org.coursewright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** A table in plain text: the first column to the left, the others to the right, two blanks between. */
public final class TextTable {

    private final List<List<String>> rows = new ArrayList<>();

    /** Adds a row; all rows have as many cells as the first. */
    public void row(Object... cells) {
        rows.add(List.of(cells).stream().map(String::valueOf).toList());
    }

    /** @return one line for each row, without blanks at the end */
    public List<String> lines() {
        int[] widths = IntStream.range(0, rows.get(0).size())
                .map(column -> rows.stream().mapToInt(row -> width(row.get(column))).max().orElse(0)).toArray();
        return rows.stream().map(row -> line(row, widths)).toList();
    }

    private static String line(List<String> row, int[] widths) {
        StringBuilder line = new StringBuilder();
        for (int column = 0; column < row.size(); column++) {
            String blanks = " ".repeat(widths[column] - width(row.get(column)));
            line.append(column == 0 ? row.get(column) + blanks : "  " + blanks + row.get(column));
        }
        return line.toString().stripTrailing();
    }

    private static int width(String cell) {
        return cell.codePointCount(0, cell.length());
    }
}
