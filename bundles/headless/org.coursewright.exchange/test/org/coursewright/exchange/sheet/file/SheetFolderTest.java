package org.coursewright.exchange.sheet.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import javax.xml.parsers.DocumentBuilderFactory;

import org.coursewright.exchange.sheet.MadeWall;
import org.coursewright.exchange.sheet.Sheet;
import org.coursewright.exchange.sheet.SheetSettings;
import org.coursewright.exchange.sheet.layout.SheetLayout;
import org.coursewright.exchange.sheet.page.SheetType;
import org.coursewright.measure.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;

class SheetFolderTest {

    @TempDir
    Path folder;

    @Test
    void marksThatLookAlikeGetFilesOfTheirOwn() throws IOException {
        Map<String, List<String>> files = new SheetFolder(folder.resolve("new")).write(
                List.of(sheet("W/1"), sheet("w_1"), sheet("../W1")), SheetForm.PDF);
        assertThat(files).containsExactly(Map.entry("W/1", List.of("wall-W_1.pdf")),
                Map.entry("w_1", List.of("wall-w_1-2.pdf")), Map.entry("../W1", List.of("wall-___W1.pdf")));
        assertThat(names(folder.resolve("new"))).containsExactly("wall-W_1.pdf", "wall-___W1.pdf", "wall-w_1-2.pdf");
    }

    @Test
    void olderSheetIsReplaced() throws IOException {
        Path older = Files.writeString(folder.resolve("wall-W1.pdf"), "older");
        new SheetFolder(folder).write(List.of(sheet("W1")), SheetForm.PDF);
        assertThat(Files.readAllBytes(older)).startsWith("%PDF-".getBytes(java.nio.charset.StandardCharsets.US_ASCII));
    }

    @Test
    void nothingIsLeftBehindWhenAFileCannotBeReplaced() throws IOException {
        Files.createDirectories(folder.resolve("wall-W2.pdf").resolve("in-the-way"));
        assertThatThrownBy(() -> new SheetFolder(folder).write(List.of(sheet("W2")), SheetForm.PDF))
                .isInstanceOf(IOException.class);
        assertThat(names(folder)).containsExactly("wall-W2.pdf");
    }

    @Test
    void svgIsWellFormedAndHasTheSizeOfThePaper() throws Exception {
        new SheetFolder(folder).write(List.of(sheet("A<&\"1")), SheetForm.SVG);
        Document svg = DocumentBuilderFactory.newInstance().newDocumentBuilder()
                .parse(folder.resolve("wall-A___1.svg").toFile());
        assertThat(svg.getDocumentElement().getAttribute("width")).isEqualTo("431.8mm");
        assertThat(svg.getDocumentElement().getElementsByTagName("text").item(0).getTextContent()).isNotBlank();
        assertThat(svg.getDocumentElement().getTextContent()).contains("Wall A<&\"1", "1'-2 1/2\"");
    }

    private static Sheet sheet(String mark) {
        return new SheetLayout(SheetType.load()).arrange(MadeWall.of(mark, Length.ofInchFraction(115, 2), 3),
                SheetSettings.USUAL);
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
