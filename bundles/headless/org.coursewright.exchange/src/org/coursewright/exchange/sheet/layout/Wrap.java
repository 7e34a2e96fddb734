package org.coursewright.exchange.sheet.layout;

import java.util.ArrayList;
import java.util.List;

import org.coursewright.exchange.sheet.page.TextMeasure;

/** Breaks text into lines. */
final class Wrap {

    private Wrap() {
    }

    /** @return lines no wider than {@code width} (mm); a word wider than that is broken */
    static List<String> lines(String text, double width, double size, TextMeasure measure) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : measure.printable(text).split(" ")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (measure.width(longer, size) <= width) {
                line = longer;
            } else {
                if (!line.isEmpty()) {
                    lines.add(line);
                }
                line = broken(word, width, size, measure, lines);
            }
        }
        lines.add(line);
        return lines;
    }

    private static String broken(String word, double width, double size, TextMeasure measure, List<String> lines) {
        String rest = word;
        while (measure.width(rest, size) > width) {
            int end = rest.offsetByCodePoints(0, 1);
            while (measure.width(rest.substring(0, rest.offsetByCodePoints(end, 1)), size) <= width) {
                end = rest.offsetByCodePoints(end, 1);
            }
            lines.add(rest.substring(0, end));
            rest = rest.substring(end);
        }
        return rest;
    }
}
