package org.coursewright.exchange.sheet.file;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Reads the texts of a PDF page, one for each text object. */
final class PrintedTexts extends PDFTextStripper {

    private final List<String> texts = new ArrayList<>();
    private StringBuilder current = new StringBuilder();

    static List<String> of(PDDocument document, int page) throws IOException {
        PrintedTexts printed = new PrintedTexts();
        printed.setStartPage(page + 1);
        printed.setEndPage(page + 1);
        printed.getText(document);
        return printed.texts;
    }

    @Override
    public void beginText() throws IOException {
        super.beginText();
        current = new StringBuilder();
    }

    @Override
    public void endText() throws IOException {
        super.endText();
        texts.add(current.toString());
    }

    @Override
    protected void processTextPosition(TextPosition text) {
        current.append(text.getUnicode());
    }
}
