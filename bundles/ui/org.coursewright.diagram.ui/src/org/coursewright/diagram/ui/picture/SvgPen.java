package org.coursewright.diagram.ui.picture;

import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;

/**
 * What an SVG drawing is drawn with at present.
 *
 * @param line colour of lines and words
 * @param fill colour of areas
 * @param width of lines
 * @param dashes of lines, empty for whole ones
 * @param font of words, null before one was set
 * @param transform of coordinates, in the words of SVG
 */
record SvgPen(Color line, Color fill, int width, String dashes, Font font, String transform) {

    static final SvgPen FIRST = new SvgPen(new Color(0, 0, 0), new Color(255, 255, 255), 1, "", null, "");

    SvgPen line(Color color) {
        return new SvgPen(color, fill, width, dashes, font, transform);
    }

    SvgPen fill(Color color) {
        return new SvgPen(line, color, width, dashes, font, transform);
    }

    SvgPen width(int pixels) {
        return new SvgPen(line, fill, pixels, dashes, font, transform);
    }

    SvgPen dashes(String pattern) {
        return new SvgPen(line, fill, width, pattern, font, transform);
    }

    SvgPen font(Font chosen) {
        return new SvgPen(line, fill, width, dashes, chosen, transform);
    }

    SvgPen moved(String more) {
        return new SvgPen(line, fill, width, dashes, font, (transform + " " + more).strip());
    }

    /** Attributes of what is drawn as lines. */
    String stroked() {
        String dashed = dashes.isEmpty() ? "" : " stroke-dasharray=\"" + dashes + "\"";
        return " fill=\"none\" stroke=\"" + hex(line) + "\" stroke-width=\"" + width + "\"" + dashed + placed();
    }

    /** Attributes of what is drawn as an area. */
    String filled() {
        return " fill=\"" + hex(fill) + "\"" + placed();
    }

    /** Attributes of words. */
    String written() {
        return " fill=\"" + hex(line) + "\"" + placed();
    }

    private String placed() {
        return transform.isEmpty() ? "" : " transform=\"" + transform + "\"";
    }

    private static String hex(Color color) {
        return "#%02x%02x%02x".formatted(color.getRed(), color.getGreen(), color.getBlue());
    }
}
