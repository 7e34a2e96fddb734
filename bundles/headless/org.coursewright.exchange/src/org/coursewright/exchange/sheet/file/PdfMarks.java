package org.coursewright.exchange.sheet.file;

import static org.coursewright.exchange.sheet.file.PdfPages.points;

import java.io.IOException;
import java.util.List;

import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.util.Matrix;
import org.coursewright.exchange.sheet.page.Label;
import org.coursewright.exchange.sheet.page.Mark;
import org.coursewright.exchange.sheet.page.Pen;
import org.coursewright.exchange.sheet.page.Shape;
import org.coursewright.exchange.sheet.page.Spot;
import org.coursewright.exchange.sheet.page.Stroke;

/** Writes marks into the content of a PDF page. */
final class PdfMarks {

    private static final float BLACK = 0;
    private static final float WHITE = 255;
    /** Thickness of the outline that makes a text bold, as a part of its size. */
    private static final double BOLD = 0.035;

    private final PDPageContentStream content;
    private final PDFont font;

    PdfMarks(PDPageContentStream content, PDFont font) {
        this.content = content;
        this.font = font;
    }

    void write(Mark mark) throws IOException {
        if (mark instanceof Stroke stroke) {
            write(stroke);
        } else if (mark instanceof Shape shape) {
            write(shape);
        } else if (mark instanceof Label label) {
            write(label);
        }
    }

    private void write(Stroke stroke) throws IOException {
        take(stroke.pen());
        content.moveTo(points(stroke.from().x()), points(stroke.from().y()));
        content.lineTo(points(stroke.to().x()), points(stroke.to().y()));
        content.stroke();
    }

    private void write(Shape shape) throws IOException {
        content.setNonStrokingColor(shape.fill().grey() / WHITE);
        Spot first = shape.corners().get(0);
        content.moveTo(points(first.x()), points(first.y()));
        for (Spot corner : shape.corners().subList(1, shape.corners().size())) {
            content.lineTo(points(corner.x()), points(corner.y()));
        }
        content.closePath();
        if (shape.outline() == Pen.NONE) {
            content.fill();
        } else {
            take(shape.outline());
            content.fillAndStroke();
        }
    }

    private void write(Label label) throws IOException {
        float size = points(label.size());
        double before = font.getStringWidth(label.text()) / 1000 * size * label.anchor().part();
        double under = Label.HALF_CAPITAL * size;
        float x = points(label.at().x());
        float y = points(label.at().y());
        content.setNonStrokingColor(BLACK);
        content.beginText();
        content.setFont(font, size);
        content.setRenderingMode(label.strong() ? RenderingMode.FILL_STROKE : RenderingMode.FILL);
        if (label.strong()) {
            content.setLineWidth((float) BOLD * size);
            content.setLineDashPattern(new float[0], 0);
        }
        content.setTextMatrix(label.turned()
                ? Matrix.getRotateInstance(Math.PI / 2, x + (float) under, y - (float) before)
                : Matrix.getTranslateInstance(x - (float) before, y - (float) under));
        content.showText(label.text());
        content.endText();
    }

    private void take(Pen pen) throws IOException {
        content.setStrokingColor(BLACK);
        content.setLineWidth(points(pen.width()));
        List<Double> dashes = pen.dashes();
        float[] pattern = new float[dashes.size()];
        for (int i = 0; i < pattern.length; i++) {
            pattern[i] = points(dashes.get(i));
        }
        content.setLineDashPattern(pattern, 0);
    }
}
