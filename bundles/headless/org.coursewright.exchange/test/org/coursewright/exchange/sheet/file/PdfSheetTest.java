package org.coursewright.exchange.sheet.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;

import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.coursewright.exchange.sheet.MadeWall;
import org.coursewright.exchange.sheet.Sheet;
import org.coursewright.exchange.sheet.SheetOpening;
import org.coursewright.exchange.sheet.SheetSettings;
import org.coursewright.exchange.sheet.layout.SheetLayout;
import org.coursewright.exchange.sheet.page.Label;
import org.coursewright.exchange.sheet.page.SheetType;
import org.coursewright.measure.Length;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class PdfSheetTest {

    private static List<Sheet> sheets;

    @BeforeAll
    static void arrange() {
        SheetLayout layout = new SheetLayout(SheetType.load());
        SheetOpening door = new SheetOpening("D1", Length.ofInches(58), Length.ofInches(36), Length.ZERO,
                Length.ofInches(81));
        sheets = Stream.of(MadeWall.of("D", Length.ofInches(240), 20, door),
                MadeWall.of("LONG", Length.ofInches(6000), 4))
                .map(wall -> layout.arrange(wall, SheetSettings.USUAL)).toList();
        assertThat(sheets.get(1).pages()).hasSizeGreaterThan(1);
    }

    @Test
    void openedAgainItHasThePagesOnTabloidPaper() throws IOException {
        for (Sheet sheet : sheets) {
            try (PDDocument document = Loader.loadPDF(PdfSheet.bytes(sheet))) {
                assertThat(document.getNumberOfPages()).isEqualTo(sheet.pages().size());
                PDRectangle paper = document.getPage(0).getMediaBox();
                assertThat(paper.getWidth()).isCloseTo(17 * 72, org.assertj.core.data.Offset.offset(0.01f));
                assertThat(paper.getHeight()).isCloseTo(11 * 72, org.assertj.core.data.Offset.offset(0.01f));
            }
        }
    }

    @Test
    void openedAgainItBearsEveryTextOfThePage() throws IOException {
        for (Sheet sheet : sheets) {
            try (PDDocument document = Loader.loadPDF(PdfSheet.bytes(sheet))) {
                for (int page = 0; page < sheet.pages().size(); page++) {
                    assertThat(PrintedTexts.of(document, page)).isEqualTo(
                            sheet.pages().get(page).labels().stream().map(Label::text).toList());
                }
            }
        }
    }

    @Test
    void theSameSheetGivesTheSameBytes() throws IOException {
        assertThat(PdfSheet.bytes(sheets.get(0))).isEqualTo(PdfSheet.bytes(sheets.get(0)));
    }
}
