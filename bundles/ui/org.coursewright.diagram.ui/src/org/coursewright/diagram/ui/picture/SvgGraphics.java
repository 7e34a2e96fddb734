package org.coursewright.diagram.ui.picture;

import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.geometry.PointList;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.graphics.FontData;

/** Writes what is drawn as elements of SVG 1.1. */
final class SvgGraphics extends PenGraphics {

    private final StringBuilder svg = new StringBuilder();

    SvgGraphics(Rectangle page) {
        super(page);
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
        element("line", " x1=\"%d\" y1=\"%d\" x2=\"%d\" y2=\"%d\"%s".formatted(x1, y1, x2, y2, pen().stroked()));
    }

    @Override
    public void drawRectangle(int x, int y, int width, int height) {
        element("rect", box(x, y, width, height) + pen().stroked());
    }

    @Override
    public void fillRectangle(int x, int y, int width, int height) {
        element("rect", box(x, y, width, height) + pen().filled());
    }

    @Override
    public void drawRoundRectangle(Rectangle box, int arcWidth, int arcHeight) {
        element("rect", box(box.x, box.y, box.width, box.height) + round(arcWidth, arcHeight) + pen().stroked());
    }

    @Override
    public void fillRoundRectangle(Rectangle box, int arcWidth, int arcHeight) {
        element("rect", box(box.x, box.y, box.width, box.height) + round(arcWidth, arcHeight) + pen().filled());
    }

    private static String box(int x, int y, int width, int height) {
        return " x=\"%d\" y=\"%d\" width=\"%d\" height=\"%d\"".formatted(x, y, width, height);
    }

    private static String round(int arcWidth, int arcHeight) {
        return " rx=\"%d\" ry=\"%d\"".formatted(arcWidth / 2, arcHeight / 2);
    }

    @Override
    public void drawOval(int x, int y, int width, int height) {
        element("ellipse", oval(x, y, width, height) + pen().stroked());
    }

    @Override
    public void fillOval(int x, int y, int width, int height) {
        element("ellipse", oval(x, y, width, height) + pen().filled());
    }

    private static String oval(int x, int y, int width, int height) {
        return " cx=\"%s\" cy=\"%s\" rx=\"%s\" ry=\"%s\"".formatted(x + width / 2.0, y + height / 2.0, width / 2.0,
                height / 2.0);
    }

    @Override
    public void drawPolygon(PointList points) {
        element("polygon", points(points) + pen().stroked());
    }

    @Override
    public void fillPolygon(PointList points) {
        element("polygon", points(points) + pen().filled());
    }

    @Override
    public void drawPolyline(PointList points) {
        element("polyline", points(points) + pen().stroked());
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
            var size = FigureUtilities.getTextExtents(words, pen().font());
            FontData font = pen().font().getFontData()[0];
            svg.append("<text x=\"%d\" y=\"%d\" font-family=\"%s, sans-serif\" font-size=\"%dpt\"%s%s>%s</text>%n"
                    .formatted(x, y + line * size.height + getFontMetrics().getAscent(), escaped(font.getName()),
                            font.getHeight(), length(words, size.width), pen().written(), escaped(words)));
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
}
