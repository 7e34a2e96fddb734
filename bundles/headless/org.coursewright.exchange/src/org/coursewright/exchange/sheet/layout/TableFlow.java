package org.coursewright.exchange.sheet.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

import org.coursewright.exchange.sheet.page.Anchor;
import org.coursewright.exchange.sheet.page.Area;
import org.coursewright.exchange.sheet.page.Pen;
import org.coursewright.exchange.sheet.page.TextMeasure;

/** Sets tables one under the other in columns, and goes on on further pages when the first has no more room. */
final class TableFlow {

    static final double SIZE = 2.1;
    private static final double TITLE_SIZE = 2.5;
    private static final double ROW = 2.95;
    private static final double TITLE = 4;
    private static final double CELL_GAP = 2.4;
    private static final double COLUMN_GAP = 6;
    private static final double TABLE_GAP = 2.5;

    private final TextMeasure measure;
    private final Area further;
    private final List<Drawing> drawings = new ArrayList<>();
    private Area region;
    private double x;
    private double y;
    private double columnWidth;

    /** Begins in an area of a first page; further pages are filled within {@code further}. */
    TableFlow(TextMeasure measure, Drawing first, Area region, Area further) {
        this.measure = measure;
        this.further = further;
        begin(first, region);
    }

    /** @return all pages, the first included */
    List<Drawing> drawings() {
        return List.copyOf(drawings);
    }

    void add(Table table) {
        double[] widths = widths(table);
        double width = width(table, widths);
        int next = 0;
        while (next < table.rows().size()) {
            double head = TITLE + ROW * (table.note().size() + 1);
            makeRoom(head + ROW * Math.min(2, table.rows().size() - next), width);
            heading(table, next > 0, widths, width);
            while (next < table.rows().size() && y - ROW >= region.y()) {
                row(table, table.rows().get(next++), widths);
            }
            columnWidth = Math.max(columnWidth, width);
        }
        y -= TABLE_GAP;
    }

    private void begin(Drawing drawing, Area area) {
        drawings.add(drawing);
        region = area;
        x = area.x();
        y = area.top();
        columnWidth = 0;
    }

    private void makeRoom(double height, double width) {
        boolean isFree = y == region.top();
        if (y - height < region.y() && !isFree) {
            x += columnWidth + COLUMN_GAP;
            y = region.top();
            columnWidth = 0;
        }
        boolean isWholeRegion = x == region.x() && y == region.top();
        boolean lacksRoom = x + width > region.right() || y - height < region.y();
        if (lacksRoom && !(isWholeRegion && region.equals(further))) {
            begin(new Drawing(measure), further);
        }
    }

    private void heading(Table table, boolean again, double[] widths, double width) {
        drawing().strong(x, y - TITLE / 2, again ? table.title() + " (continued)" : table.title(), TITLE_SIZE);
        y -= TITLE;
        for (String line : table.note()) {
            drawing().text(x, y - ROW / 2, line, SIZE, Anchor.START);
            y -= ROW;
        }
        row(table, table.columns().stream().map(Table.Column::heading).toList(), widths);
        drawing().line(x, y, x + width, y, Pen.FINE);
    }

    private void row(Table table, List<String> cells, double[] widths) {
        double left = x;
        for (int i = 0; i < widths.length; i++) {
            Anchor align = table.columns().get(i).align();
            if (!cells.get(i).isEmpty()) {
                drawing().text(left + align.part() * widths[i], y - ROW / 2, cells.get(i), SIZE, align);
            }
            left += widths[i] + CELL_GAP;
        }
        y -= ROW;
    }

    private Drawing drawing() {
        return drawings.get(drawings.size() - 1);
    }

    private double[] widths(Table table) {
        return IntStream.range(0, table.columns().size())
                .mapToDouble(i -> Math.max(width(table.columns().get(i).heading()),
                        table.rows().stream().mapToDouble(row -> width(row.get(i))).max().orElse(0)))
                .toArray();
    }

    private double width(Table table, double[] widths) {
        double cells = java.util.Arrays.stream(widths).sum() + CELL_GAP * (widths.length - 1);
        double title = drawing().width(table.title() + " (continued)", TITLE_SIZE);
        double notes = table.note().stream().mapToDouble(this::width).max().orElse(0);
        return Math.max(cells, Math.max(title, notes));
    }

    private double width(String text) {
        return drawing().width(text, SIZE);
    }
}
