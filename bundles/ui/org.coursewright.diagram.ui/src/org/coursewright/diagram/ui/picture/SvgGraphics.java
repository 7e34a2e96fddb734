package org.coursewright.diagram.ui.picture;

import java.util.ArrayDeque;
import java.util.Deque;

import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.PointList;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.FontData;
import org.eclipse.swt.graphics.FontMetrics;
import org.eclipse.swt.graphics.Image;

/** Writes what is drawn as elements of SVG 1.1; for lines, areas and words, not for images and gradients. */
final class SvgGraphics extends Graphics {

    private final StringBuilder svg = new StringBuilder();
    private final Deque<SvgPen> pushed = new ArrayDeque<>();
    private final Rectangle page;
    private SvgPen pen = SvgPen.FIRST;
    private int style = LINE_SOLID;

    SvgGraphics(Rectangle page) {
        this.page = page;
    }

    /** @return the elements drawn so far */
    String elements() {
        return svg.toString();
    }

    private void element(String name, String attributes) {
        svg.append('<').append(name).append(attributes).append("/>\n");
    }

    @Override
    public void drawLine(int x1, int y1, int x2, int y2) {
        element("line", " x1=\"%d\" y1=\"%d\" x2=\"%d\" y2=\"%d\"%s".formatted(x1, y1, x2, y2, pen.stroked()));
    }

    @Override
    public void drawRectangle(int x, int y, int width, int height) {
        element("rect", box(x, y, width, height) + pen.stroked());
    }

    @Override
    public void fillRectangle(int x, int y, int width, int height) {
        element("rect", box(x, y, width, height) + pen.filled());
    }

    @Override
    public void drawRoundRectangle(Rectangle box, int arcWidth, int arcHeight) {
        element("rect", box(box.x, box.y, box.width, box.height) + round(arcWidth, arcHeight) + pen.stroked());
    }

    @Override
    public void fillRoundRectangle(Rectangle box, int arcWidth, int arcHeight) {
        element("rect", box(box.x, box.y, box.width, box.height) + round(arcWidth, arcHeight) + pen.filled());
    }

    private static String box(int x, int y, int width, int height) {
        return " x=\"%d\" y=\"%d\" width=\"%d\" height=\"%d\"".formatted(x, y, width, height);
    }

    private static String round(int arcWidth, int arcHeight) {
        return " rx=\"%d\" ry=\"%d\"".formatted(arcWidth / 2, arcHeight / 2);
    }

    @Override
    public void drawOval(int x, int y, int width, int height) {
        element("ellipse", oval(x, y, width, height) + pen.stroked());
    }

    @Override
    public void fillOval(int x, int y, int width, int height) {
        element("ellipse", oval(x, y, width, height) + pen.filled());
    }

    private static String oval(int x, int y, int width, int height) {
        return " cx=\"%s\" cy=\"%s\" rx=\"%s\" ry=\"%s\"".formatted(x + width / 2.0, y + height / 2.0, width / 2.0,
                height / 2.0);
    }

    @Override
    public void drawPolygon(PointList points) {
        element("polygon", points(points) + pen.stroked());
    }

    @Override
    public void fillPolygon(PointList points) {
        element("polygon", points(points) + pen.filled());
    }

    @Override
    public void drawPolyline(PointList points) {
        element("polyline", points(points) + pen.stroked());
    }

    private static String points(PointList points) {
        StringBuilder list = new StringBuilder();
        for (int i = 0; i < points.size(); i++) {
            list.append(i == 0 ? "" : " ").append(points.getPoint(i).x).append(',').append(points.getPoint(i).y);
        }
        return " points=\"" + list + "\"";
    }

    /** Words are as long as on the screen, whatever font the reader has. */
    @Override
    public void drawText(String text, int x, int y) {
        int line = 0;
        for (String words : text.split("\n")) {
            var size = FigureUtilities.getTextExtents(words, pen.font());
            FontData font = pen.font().getFontData()[0];
            svg.append("<text x=\"%d\" y=\"%d\" font-family=\"%s, sans-serif\" font-size=\"%dpt\"%s%s>%s</text>%n"
                    .formatted(x, y + line * size.height + getFontMetrics().getAscent(), escaped(font.getName()),
                            font.getHeight(), length(words, size.width), pen.written(), escaped(words)));
            line++;
        }
    }

    private static String length(String words, int width) {
        return words.isEmpty() ? "" : " textLength=\"" + width + "\"";
    }

    @Override
    public void drawString(String text, int x, int y) {
        drawText(text, x, y);
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
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

    /** The whole page is drawn. */
    @Override
    public Rectangle getClip(Rectangle clip) {
        return clip.setBounds(page);
    }

    @Override
    public void setClip(Rectangle clip) {
        // nothing is drawn beyond the page that would have to be cut off
    }

    @Override
    public void clipRect(Rectangle clip) {
        // as above
    }

    @Override
    public boolean getXORMode() {
        return false;
    }

    @Override
    public void setXORMode(boolean wanted) {
        // not known to SVG
    }

    @Override
    public void dispose() {
        // holds nothing
    }

    @Override
    public void drawArc(int x, int y, int width, int height, int offset, int length) {
        throw notDrawn();
    }

    @Override
    public void fillArc(int x, int y, int width, int height, int offset, int length) {
        throw notDrawn();
    }

    @Override
    public void drawFocus(int x, int y, int width, int height) {
        throw notDrawn();
    }

    @Override
    public void drawImage(Image image, int x, int y) {
        throw notDrawn();
    }

    @Override
    public void drawImage(Image image, int x1, int y1, int w1, int h1, int x2, int y2, int w2, int h2) {
        throw notDrawn();
    }

    @Override
    public void fillGradient(int x, int y, int width, int height, boolean vertical) {
        throw notDrawn();
    }

    @Override
    public void fillString(String text, int x, int y) {
        throw notDrawn();
    }

    @Override
    public void fillText(String text, int x, int y) {
        throw notDrawn();
    }

    private static UnsupportedOperationException notDrawn() {
        return new UnsupportedOperationException("SVG pictures hold lines, areas and words only.");
    }
}
