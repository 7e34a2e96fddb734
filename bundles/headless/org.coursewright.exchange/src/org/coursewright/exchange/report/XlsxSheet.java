package org.coursewright.exchange.report;

import java.util.List;

/**
 * One table as a worksheet.
 *
 * @param table what is on it
 * @param namespace of SpreadsheetML
 */
record XlsxSheet(ReportTable table, String namespace) {

    private static final int WIDEST = 60;
    private static final int NARROWEST = 8;
    private static final int LETTERS = 26;

    String xml() {
        StringBuilder xml = new StringBuilder("<worksheet xmlns=\"%s\">".formatted(namespace));
        xml.append("<sheetViews><sheetView workbookViewId=\"0\"><pane ySplit=\"1\" topLeftCell=\"A2\" "
                + "activePane=\"bottomLeft\" state=\"frozen\"/></sheetView></sheetViews>");
        xml.append(columns()).append("<sheetData>").append(header());
        for (int row = 0; row < table.rows().size(); row++) {
            xml.append(row(row + 2, table.rows().get(row)));
        }
        return xml.append("</sheetData></worksheet>").toString();
    }

    private String columns() {
        if (table.columns().isEmpty()) {
            return "";
        }
        StringBuilder xml = new StringBuilder("<cols>");
        for (int column = 0; column < table.columns().size(); column++) {
            int index = column;
            int widest = table.rows().stream().mapToInt(row -> row.get(index).text().length()).max().orElse(0);
            int width = Math.max(NARROWEST,
                    Math.min(WIDEST, Math.max(widest, table.columns().get(column).length()) + 2));
            xml.append("<col min=\"%d\" max=\"%d\" width=\"%d\" customWidth=\"1\"/>".formatted(column + 1, column + 1,
                    width));
        }
        return xml.append("</cols>").toString();
    }

    private String header() {
        StringBuilder xml = new StringBuilder("<row r=\"1\">");
        for (int column = 0; column < table.columns().size(); column++) {
            xml.append(text(1, column, table.columns().get(column), " s=\"1\""));
        }
        return xml.append("</row>").toString();
    }

    private static String row(int number, List<ReportTable.Cell> cells) {
        StringBuilder xml = new StringBuilder("<row r=\"%d\">".formatted(number));
        for (int column = 0; column < cells.size(); column++) {
            ReportTable.Cell cell = cells.get(column);
            int at = column;
            xml.append(cell.number().map(value -> "<c r=\"%s\"><v>%s</v></c>".formatted(name(number, at), value
                    .toPlainString())).orElseGet(() -> text(number, at, cell.text(), "")));
        }
        return xml.append("</row>").toString();
    }

    private static String text(int row, int column, String text, String style) {
        return "<c r=\"%s\" t=\"inlineStr\"%s><is><t xml:space=\"preserve\">%s</t></is></c>".formatted(
                name(row, column),
                style, escaped(text));
    }

    /** @return such as {@code AB12} */
    static String name(int row, int column) {
        StringBuilder letters = new StringBuilder();
        for (int rest = column + 1; rest > 0; rest = (rest - 1) / LETTERS) {
            letters.insert(0, (char) ('A' + (rest - 1) % LETTERS));
        }
        return letters.append(row).toString();
    }

    /** @return text that XML can hold */
    static String escaped(String text) {
        StringBuilder escaped = new StringBuilder();
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '"' -> escaped.append("&quot;");
                default -> escaped.appendCodePoint(isAllowed(c) ? c : '?');
            }
        });
        return escaped.toString();
    }

    private static boolean isAllowed(int c) {
        return c == '\t' || c == '\n' || c >= ' ' && c < 0xD800 || c >= 0xE000 && c <= 0xFFFD || c > 0xFFFF;
    }
}
