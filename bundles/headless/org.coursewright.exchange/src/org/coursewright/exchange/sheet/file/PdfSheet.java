package org.coursewright.exchange.sheet.file;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.coursewright.exchange.sheet.Sheet;
import org.coursewright.exchange.sheet.page.Mark;
import org.coursewright.exchange.sheet.page.SheetPage;
import org.coursewright.exchange.sheet.page.SheetType;

/** A sheet as PDF. The same sheet gives the same bytes: no date, and an identity that does not depend on the time. */
final class PdfSheet {

    private static final float POINTS_PER_MILLIMETRE = 72 / 25.4f;

    private PdfSheet() {
    }

    static byte[] bytes(Sheet sheet) throws IOException {
        try (PDDocument document = new PDDocument(); InputStream type = SheetType.open()) {
            document.setDocumentId(0L);
            document.getDocumentInformation().setTitle("Setting-out sheet of wall " + sheet.mark());
            PDFont font = PDType0Font.load(document, type, true);
            for (SheetPage page : sheet.pages()) {
                write(page, document, font);
            }
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes);
            return bytes.toByteArray();
        }
    }

    private static void write(SheetPage page, PDDocument document, PDFont font) throws IOException {
        PDPage paper = new PDPage(new PDRectangle(points(page.width()), points(page.height())));
        document.addPage(paper);
        try (PDPageContentStream content = new PDPageContentStream(document, paper)) {
            PdfMarks marks = new PdfMarks(content, font);
            for (Mark mark : page.marks()) {
                marks.write(mark);
            }
        }
    }

    static float points(double millimetres) {
        return (float) millimetres * POINTS_PER_MILLIMETRE;
    }
}
