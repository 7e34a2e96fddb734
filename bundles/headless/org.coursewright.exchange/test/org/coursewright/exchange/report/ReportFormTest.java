package org.coursewright.exchange.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

import javax.xml.parsers.DocumentBuilderFactory;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.coursewright.exchange.report.ReportTable.Cell;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class ReportFormTest {

    private static final Report REPORT = new Report(
            "Take-off of A & B", List.of(new ReportTable("Lines", List.of("item",
                    "quantity"),
                    List.of(List.of(Cell.of("sand, \"washed\""), Cell.of(new BigDecimal("12.50"))), List.of(Cell.of(
                            "=SUM(A1)"), Cell.of(3)))),
                    new ReportTable("Walls", List.of("wall"), List.of(List.of(Cell.of(
                            "W<1>"))))),
            List.of("It is an estimate."));

    @TempDir
    Path folder;

    @Test
    void csvIsTheFirstTableQuotedAsRfc4180() throws IOException {
        assertThat(new String(ReportForm.CSV.bytes(REPORT), StandardCharsets.UTF_8)).isEqualTo(
                "item,quantity\r\n\"sand, \"\"washed\"\"\",12.50\r\n'=SUM(A1),3\r\n");
    }

    /** ECMA-376: the parts that a workbook must have, each well-formed, and cells that hold what they should. */
    @Test
    void workbookHasItsPartsAndCells() throws Exception {
        Map<String, Document> parts = parts(ReportForm.XLSX.bytes(REPORT));
        assertThat(parts.keySet()).contains("[Content_Types].xml", "_rels/.rels", "xl/workbook.xml",
                "xl/_rels/workbook.xml.rels", "xl/styles.xml", "xl/worksheets/sheet3.xml");
        assertThat(texts(parts.get("xl/workbook.xml"), "sheet", "name")).containsExactly("Lines", "Walls", "Notes");
        Document lines = parts.get("xl/worksheets/sheet1.xml");
        assertThat(texts(lines, "t", "")).containsExactly("item", "quantity", "sand, \"washed\"", "=SUM(A1)");
        assertThat(texts(lines, "v", "")).containsExactly("12.50", "3");
        assertThat(lines.getElementsByTagName("f").getLength()).isZero();
        assertThat(texts(parts.get("xl/worksheets/sheet2.xml"), "t", "")).containsExactly("wall", "W<1>");
        assertThat(ReportForm.XLSX.bytes(REPORT)).isEqualTo(ReportForm.XLSX.bytes(REPORT));
    }

    @Test
    void columnsBeyondZAreNamedByTwoLetters() {
        assertThat(List.of(XlsxSheet.name(1, 0), XlsxSheet.name(2, 25), XlsxSheet.name(3, 26), XlsxSheet.name(4, 701),
                XlsxSheet.name(5, 702))).containsExactly("A1", "Z2", "AA3", "ZZ4", "AAA5");
    }

    @Test
    void paperShowsEveryRowAndRepeatsHeaders() throws IOException {
        List<List<Cell>> many = IntStream.range(0, 100).mapToObj(i -> List.of(Cell.of("row " + i), Cell.of(i)))
                .toList();
        byte[] pdf = ReportForm.PDF.bytes(new Report("Long", List.of(new ReportTable("T", List.of("name", "count"),
                many)), List.of("The end.")));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            String text = new PDFTextStripper().getText(document);
            assertThat(document.getNumberOfPages()).isGreaterThan(2);
            assertThat(text).contains("row 0", "row 99", "The end.");
            assertThat(text.split("name", -1)).hasSize(document.getNumberOfPages() + 1);
        }
    }

    @Test
    void oldFileIsReplacedAndNothingIsLeftBeside() throws IOException {
        Path file = Files.writeString(folder.resolve("price.csv"), "old");
        ReportForm.of(file).orElseThrow().write(REPORT, file);
        assertThat(Files.readString(file)).startsWith("item,quantity");
        try (var files = Files.list(folder)) {
            assertThat(files).hasSize(1);
        }
    }

    @Test
    void formFollowsFromTheEnding() {
        assertThat(ReportForm.of(Path.of("A.XLSX"))).contains(ReportForm.XLSX);
        assertThat(ReportForm.of(Path.of("a.txt"))).isEmpty();
    }

    @Test
    void rowThatIsNotAsWideAsItsHeaderIsRefused() {
        assertThatThrownBy(() -> new ReportTable("T", List.of("a", "b"), List.of(List.of(Cell.of(1)))))
                .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("\"T\"");
    }

    private static Map<String, Document> parts(byte[] workbook) throws Exception {
        Map<String, Document> parts = new TreeMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(workbook))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                parts.put(entry.getName(), DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(
                        new ByteArrayInputStream(zip.readAllBytes())));
            }
        }
        return parts;
    }

    private static List<String> texts(Document part, String tag, String attribute) {
        NodeList nodes = part.getElementsByTagName(tag);
        return IntStream.range(0, nodes.getLength()).mapToObj(nodes::item).map(Element.class::cast).map(
                element -> attribute.isEmpty() ? element.getTextContent() : element.getAttribute(attribute)).toList();
    }
}
