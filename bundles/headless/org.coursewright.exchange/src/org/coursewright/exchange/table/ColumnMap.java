package org.coursewright.exchange.table;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

import org.coursewright.exchange.csv.CsvTable;
import org.coursewright.exchange.csv.Separator;
import org.coursewright.exchange.remark.Place;
import org.coursewright.exchange.remark.Remarks;
import org.coursewright.exchange.remark.Shown;

/** Where the columns of a schedule stand in a table; their order is free, capital letters do not matter. */
public final class ColumnMap {

    private final Map<String, Integer> indexes = new HashMap<>();

    private ColumnMap() {
    }

    /** Reads the header; notes columns that are missing, named twice (errors) or unknown (warning). */
    public static ColumnMap of(CsvTable table, List<Column> columns, Remarks remarks) {
        Place header = Place.of(table.file()).atLine(table.header().line());
        ColumnMap map = new ColumnMap();
        List<String> known = columns.stream().map(Column::name).toList();
        List<String> named = table.header().cells();
        for (int i = 0; i < named.size(); i++) {
            String name = named.get(i).toLowerCase(Locale.ROOT);
            if (known.contains(name) && map.indexes.putIfAbsent(name, i) != null) {
                remarks.error(header.inColumn(name), "The header names this column twice. Keep one of them.");
            }
        }
        map.noteMissing(header, columns, remarks);
        noteUnknown(header, named, known, remarks);
        noteSeparator(table, header, remarks);
        return map;
    }

    /** @return whether the table has the column */
    public boolean has(String column) {
        return indexes.containsKey(column);
    }

    /** @return index of a column that the table has, otherwise one past any row's end */
    public int indexOf(String column) {
        return indexes.getOrDefault(column, Integer.MAX_VALUE);
    }

    private void noteMissing(Place header, List<Column> columns, Remarks remarks) {
        String missing = columns.stream().filter(column -> column.mandatory() && !has(column.name()))
                .map(Column::name).collect(Collectors.joining(", "));
        if (!missing.isEmpty()) {
            remarks.error(header, "The header lacks %s. Its columns are %s.".formatted(missing,
                    columns.stream().map(Column::name).collect(Collectors.joining(","))));
        }
    }

    private static void noteUnknown(Place header, List<String> named, List<String> known, Remarks remarks) {
        String unknown = named.stream().filter(name -> !name.isEmpty())
                .filter(name -> !known.contains(name.toLowerCase(Locale.ROOT))).limit(20).map(Shown::quoted)
                .collect(Collectors.joining(", "));
        if (!unknown.isEmpty()) {
            remarks.warning(header, "Passed over %s: no such column is known here.".formatted(unknown));
        }
    }

    private static void noteSeparator(CsvTable table, Place header, Remarks remarks) {
        if (table.separator() != Separator.COMMA) {
            remarks.warning(header, "Read with %s between cells.".formatted(table.separator().plural()));
        }
    }
}
