package org.coursewright.exchange.sheet.file;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.coursewright.exchange.sheet.page.Mark;
import org.coursewright.exchange.sheet.page.SheetPage;
import org.coursewright.exchange.sheet.page.SheetType;

/** Pages as PDF. The same pages give the same bytes: no date, and an identity that does not depend on the time. */
public final class PdfPages {

    private static final float POINTS_PER_MILLIMETRE = 72 / 25.4f;

    private PdfPages() {
    }

    /**
     * @param title of the document
     * @param pages from first to last
     * @return the content of the file
     * @throws IOException if the type is missing from this installation
     */
    public static byte[] bytes(String title, List<SheetPage> pages) throws IOException {
        try (PDDocument document = new PDDocument(); InputStream type = SheetType.open()) {
            document.setDocumentId(0L);
            document.getDocumentInformation().setTitle(title);
            PDFont font = PDType0Font.load(document, type, true);
            for (SheetPage page : pages) {
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
