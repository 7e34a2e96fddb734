package org.coursewright.diagram.ui.picture;

import java.util.ArrayDeque;
import java.util.Deque;

import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.FontMetrics;

/** Keeps what is drawn with: colours, lines, font and the place of coordinates, and what they were before. */
abstract class PenGraphics extends LineArtGraphics {

    private final Deque<SvgPen> pushed = new ArrayDeque<>();
    private SvgPen pen = SvgPen.FIRST;
    private int style = LINE_SOLID;

    /** @param page all that is drawn lies on it */
    PenGraphics(Rectangle page) {
        super(page);
    }

    /** @return what is drawn with at present */
    final SvgPen pen() {
        return pen;
    }

    @Override
    public void translate(int dx, int dy) {
        pen = pen.moved("translate(%d %d)".formatted(dx, dy));
    }

    @Override
    public void rotate(float degrees) {
        pen = pen.moved("rotate(%s)".formatted(degrees));
    }

    @Override
    public void scale(double amount) {
        pen = pen.moved("scale(%s)".formatted(amount));
    }

    @Override
    public void pushState() {
        pushed.push(pen);
    }

    @Override
    public void popState() {
        pen = pushed.pop();
    }

    @Override
    public void restoreState() {
        pen = pushed.element();
    }

    @Override
    public void setForegroundColor(Color color) {
        pen = pen.line(color);
    }

    @Override
    public Color getForegroundColor() {
        return pen.line();
    }

    @Override
    public void setBackgroundColor(Color color) {
        pen = pen.fill(color);
    }

    @Override
    public Color getBackgroundColor() {
        return pen.fill();
    }

    @Override
    public void setFont(Font font) {
        pen = pen.font(font);
    }

    @Override
    public Font getFont() {
        return pen.font();
    }

    @Override
    public FontMetrics getFontMetrics() {
        return FigureUtilities.getFontMetrics(pen.font());
    }

    @Override
    public void setLineWidth(int width) {
        pen = pen.width(width);
    }

    @Override
    public int getLineWidth() {
        return pen.width();
    }

    @Override
    public void setLineStyle(int chosen) {
        style = chosen;
        pen = pen.dashes(chosen == LINE_SOLID ? "" : "4 3");
    }

    @Override
    public int getLineStyle() {
        return style;
    }

    @Override
    public void setLineDash(int[] dashes) {
        StringBuilder pattern = new StringBuilder();
        for (int dash : dashes) {
            pattern.append(pattern.isEmpty() ? "" : " ").append(dash);
        }
        pen = pen.dashes(pattern.toString());
    }

    @Override
    public void setAntialias(int value) {
        // readers of SVG smooth lines as they see fit
    }
}
