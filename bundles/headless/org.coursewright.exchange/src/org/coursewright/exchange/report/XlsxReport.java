package org.coursewright.exchange.report;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * A report as an Office Open XML workbook (ECMA-376, SpreadsheetML): one sheet for each table, and the notes on a last one.
 * Numbers are numbers, everything else is inline text, so that nothing is ever taken for a formula. The same report gives
 * the same bytes.
 */
final class XlsxReport {

    private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private static final String OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private static final String PACKAGE = "http://schemas.openxmlformats.org/package/2006/";
    private static final String CONTENT = "application/vnd.openxmlformats-officedocument.spreadsheetml.";
    private static final String HEAD = "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n";

    private final List<ReportTable> sheets;

    private XlsxReport(Report report) {
        sheets = new ArrayList<>(report.tables());
        if (!report.notes().isEmpty()) {
            sheets.add(new ReportTable("Notes", List.of(report.title()), report.notes().stream().map(note -> List.of(
                    ReportTable.Cell.of(note))).toList()));
        }
    }

    static byte[] bytes(Report report) throws IOException {
        return new XlsxReport(report).bytes();
    }

    private byte[] bytes() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            put(zip, "[Content_Types].xml", contentTypes());
            put(zip, "_rels/.rels", relations(List.of(relation(1, "officeDocument", "xl/workbook.xml"))));
            put(zip, "xl/workbook.xml", workbook());
            List<String> parts = new ArrayList<>(IntStream.rangeClosed(1, sheets.size()).mapToObj(i -> relation(i,
                    "worksheet", "worksheets/sheet%d.xml".formatted(i))).toList());
            parts.add(relation(sheets.size() + 1, "styles", "styles.xml"));
            put(zip, "xl/_rels/workbook.xml.rels", relations(parts));
            put(zip, "xl/styles.xml", styles());
            for (int i = 0; i < sheets.size(); i++) {
                put(zip, "xl/worksheets/sheet%d.xml".formatted(i + 1), new XlsxSheet(sheets.get(i), MAIN).xml());
            }
        }
        return bytes.toByteArray();
    }

    private static void put(ZipOutputStream zip, String name, String xml) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTime(0);
        zip.putNextEntry(entry);
        zip.write((HEAD + xml).getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
    }

    private String contentTypes() {
        StringBuilder xml = new StringBuilder("<Types xmlns=\"%scontent-types\">".formatted(PACKAGE));
        xml.append(
                "<Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>");
        xml.append(override("/xl/workbook.xml", "sheet.main+xml"));
        xml.append(override("/xl/styles.xml", "styles+xml"));
        for (int i = 1; i <= sheets.size(); i++) {
            xml.append(override("/xl/worksheets/sheet%d.xml".formatted(i), "worksheet+xml"));
        }
        return xml.append("</Types>").toString();
    }

    private static String override(String part, String type) {
        return "<Override PartName=\"%s\" ContentType=\"%s%s\"/>".formatted(part, CONTENT, type);
    }

    private static String relations(List<String> relations) {
        return "<Relationships xmlns=\"%srelationships\">%s</Relationships>".formatted(PACKAGE, String.join("",
                relations));
    }

    private static String relation(int id, String type, String target) {
        return "<Relationship Id=\"rId%d\" Type=\"%s/%s\" Target=\"%s\"/>".formatted(id, OFFICE, type, target);
    }

    private String workbook() {
        StringBuilder xml = new StringBuilder("<workbook xmlns=\"%s\" xmlns:r=\"%s\"><sheets>".formatted(MAIN, OFFICE));
        for (int i = 0; i < sheets.size(); i++) {
            xml.append("<sheet name=\"%s\" sheetId=\"%d\" r:id=\"rId%d\"/>".formatted(XlsxSheet.escaped(sheets.get(i)
                    .name()), i + 1, i + 1));
        }
        return xml.append("</sheets></workbook>").toString();
    }

    /** Style 0 is plain, style 1 is the bold of headers. */
    private static String styles() {
        return ("<styleSheet xmlns=\"%s\"><fonts count=\"2\"><font><sz val=\"11\"/><name val=\"Calibri\"/></font>"
                + "<font><b/><sz val=\"11\"/><name val=\"Calibri\"/></font></fonts><fills count=\"2\"><fill>"
                + "<patternFill patternType=\"none\"/></fill><fill><patternFill patternType=\"gray125\"/></fill></fills>"
                + "<borders count=\"1\"><border><left/><right/><top/><bottom/><diagonal/></border></borders>"
                + "<cellStyleXfs count=\"1\"><xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\" borderId=\"0\"/></cellStyleXfs>"
                + "<cellXfs count=\"2\"><xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"0\"/>"
                + "<xf numFmtId=\"0\" fontId=\"1\" fillId=\"0\" borderId=\"0\" xfId=\"0\" applyFont=\"1\"/></cellXfs>"
                + "</styleSheet>").formatted(MAIN);
    }
}
