package org.coursewright.exchange.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import org.coursewright.exchange.sheet.file.PdfPages;
import org.coursewright.exchange.sheet.page.Anchor;
import org.coursewright.exchange.sheet.page.Label;
import org.coursewright.exchange.sheet.page.Mark;
import org.coursewright.exchange.sheet.page.Pen;
import org.coursewright.exchange.sheet.page.SheetPage;
import org.coursewright.exchange.sheet.page.SheetType;
import org.coursewright.exchange.sheet.page.Spot;
import org.coursewright.exchange.sheet.page.Stroke;

/** A report on A4 paper, lying: table after table with repeated headers, then the notes. */
final class PdfReport {

    private static final double WIDTH = 297;
    private static final double HEIGHT = 210;
    private static final double MARGIN = 15;
    private static final double SIZE = 3;
    private static final double TITLE = 4.5;
    private static final double LINE = 4.6;
    private static final double GAP = 3;

    private final Report report;
    private final SheetType type = SheetType.load();
    private final List<SheetPage> pages = new ArrayList<>();

    private List<Mark> marks = new ArrayList<>();
    private double y;

    private PdfReport(Report report) {
        this.report = report;
    }

    static byte[] bytes(Report report) throws IOException {
        return new PdfReport(report).bytes();
    }

    private byte[] bytes() throws IOException {
        begin();
        report.tables().forEach(this::add);
        note();
        end();
        return PdfPages.bytes(report.title(), pages);
    }

    private void begin() {
        marks = new ArrayList<>();
        y = HEIGHT - MARGIN;
        put(MARGIN, report.title(), TITLE, Anchor.START, true);
        put(WIDTH - MARGIN, "%d".formatted(pages.size() + 1), SIZE, Anchor.END, false);
        y -= 2 * LINE;
    }

    private void end() {
        pages.add(new SheetPage("%s, page %d".formatted(report.title(), pages.size() + 1), WIDTH, HEIGHT, marks));
    }

    private void add(ReportTable table) {
        double[] widths = widths(table);
        if (y < MARGIN + 4 * LINE) {
            turn();
        }
        put(MARGIN, table.name(), SIZE, Anchor.START, true);
        y -= LINE;
        header(table, widths);
        for (List<ReportTable.Cell> row : table.rows()) {
            if (y < MARGIN) {
                turn();
                header(table, widths);
            }
            row(row, widths);
        }
        y -= LINE;
    }

    private void turn() {
        end();
        begin();
    }

    private void header(ReportTable table, double[] widths) {
        double x = MARGIN;
        for (int column = 0; column < widths.length; column++) {
            put(x, fitted(table.columns().get(column), widths[column]), SIZE, Anchor.START, true);
            x += widths[column] + GAP;
        }
        marks.add(new Stroke(new Spot(MARGIN, y - LINE / 2), new Spot(Math.min(x, WIDTH - MARGIN), y - LINE / 2),
                Pen.FINE));
        y -= LINE;
    }

    private void row(List<ReportTable.Cell> row, double[] widths) {
        double x = MARGIN;
        for (int column = 0; column < widths.length; column++) {
            boolean number = row.get(column).number().isPresent();
            put(number ? x + widths[column] : x, fitted(row.get(column).text(), widths[column]), SIZE, number
                    ? Anchor.END
                    : Anchor.START, false);
            x += widths[column] + GAP;
        }
        y -= LINE;
    }

    private void note() {
        for (String note : report.notes()) {
            if (y < MARGIN) {
                turn();
            }
            put(MARGIN, fitted(note, WIDTH - 2 * MARGIN), SIZE, Anchor.START, false);
            y -= LINE;
        }
    }

    /** As wide as the widest cell; if that is too much together, all narrower by the same part. */
    private double[] widths(ReportTable table) {
        double[] widths = new double[table.columns().size()];
        double sum = 0;
        for (int column = 0; column < widths.length; column++) {
            int index = column;
            widths[column] = Math.max(type.width(type.printable(table.columns().get(column)), SIZE), table.rows()
                    .stream().mapToDouble(row -> type.width(type.printable(row.get(index).text()), SIZE)).max().orElse(
                            0));
            sum += widths[column];
        }
        double room = WIDTH - 2 * MARGIN - GAP * Math.max(0, widths.length - 1);
        for (int column = 0; sum > room && column < widths.length; column++) {
            widths[column] *= room / sum;
        }
        return widths;
    }

    /** @return the text, or as much of it as fits, ended by an ellipsis */
    private String fitted(String text, double width) {
        String printable = type.printable(text);
        if (type.width(printable, SIZE) <= width + 1e-9) {
            return printable;
        }
        int end = printable.length();
        while (end > 0 && type.width(printable.substring(0, end) + "\u2026", SIZE) > width) {
            end = printable.offsetByCodePoints(end, -1);
        }
        return printable.substring(0, end) + "\u2026";
    }

    private void put(double x, String text, double size, Anchor anchor, boolean strong) {
        marks.add(new Label(new Spot(x, y), text, size, anchor, false, strong));
    }
}
