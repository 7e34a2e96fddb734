package org.coursewright.exchange.sheet.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.HorizontalMetricsTable;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessRead;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.font.PDFont;

/** The type that sheets are printed in: Liberation Sans, which PDFBox brings and every PDF file of ours carries. */
public final class SheetType implements TextMeasure {

    private static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    private final CmapLookup glyphs;
    private final HorizontalMetricsTable metrics;
    private final double unitsPerEm;

    private SheetType(CmapLookup glyphs, HorizontalMetricsTable metrics, double unitsPerEm) {
        this.glyphs = glyphs;
        this.metrics = metrics;
        this.unitsPerEm = unitsPerEm;
    }

    /** @return the type, ready to measure with */
    public static SheetType load() {
        try (InputStream in = open();
                RandomAccessRead data = new RandomAccessReadBuffer(in);
                TrueTypeFont font = new TTFParser().parse(data)) {
            return new SheetType(font.getUnicodeCmapLookup(), font.getHorizontalMetrics(), font.getUnitsPerEm());
        } catch (IOException e) {
            throw new UncheckedIOException("The type for sheets is missing or damaged in this installation.", e);
        }
    }

    /** @return the font file, to be closed by the caller */
    public static InputStream open() {
        return PDFont.class.getResourceAsStream(FONT);
    }

    @Override
    public double width(String text, double size) {
        return text.codePoints().mapToDouble(this::advance).sum() / unitsPerEm * size;
    }

    @Override
    public String printable(String text) {
        StringBuilder printable = new StringBuilder();
        text.strip().codePoints().map(character -> isPrintable(character) ? character : '?')
                .forEach(printable::appendCodePoint);
        return printable.toString();
    }

    private boolean isPrintable(int character) {
        return !Character.isISOControl(character) && glyphs.getGlyphId(character) != 0;
    }

    private double advance(int character) {
        return metrics.getAdvanceWidth(glyphs.getGlyphId(character));
    }
}
