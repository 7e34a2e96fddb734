package org.coursewright.layout.ui.plan.paint;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;

/**
 * A line that is broken where it would run through words.
 *
 * @param from a pixel
 * @param to another
 */
record BrokenLine(Point from, Point to) {

    /** A part of the line, as shares of its length from its start. */
    record Part(double begin, double end) {
    }

    /**
     * @param graphics to draw on
     * @param words boxes that stay free
     */
    void paint(Graphics graphics, List<Rectangle> words) {
        parts(words).forEach(part -> graphics.drawLine(at(part.begin()), at(part.end())));
    }

    /** The parts outside all boxes, from the start on. */
    List<Part> parts(List<Rectangle> words) {
        List<Part> gaps = words.stream().map(this::inside).flatMap(Optional::stream)
                .sorted(Comparator.comparing(Part::begin)).toList();
        List<Part> parts = new ArrayList<>();
        double begin = 0;
        for (Part gap : gaps) {
            if (gap.begin() > begin) {
                parts.add(new Part(begin, gap.begin()));
            }
            begin = Math.max(begin, gap.end());
        }
        if (begin < 1) {
            parts.add(new Part(begin, 1));
        }
        return parts;
    }

    private Optional<Part> inside(Rectangle box) {
        Part wide = between(from.x, to.x, box.x, box.right());
        Part high = between(from.y, to.y, box.y, box.bottom());
        Part both = new Part(Math.max(wide.begin(), high.begin()), Math.min(wide.end(), high.end()));
        return both.begin() < both.end() ? Optional.of(both) : Optional.empty();
    }

    /** The part of the line between two coordinates, in one direction only. */
    private static Part between(int from, int to, int low, int high) {
        if (from == to) {
            return from > low && from < high ? new Part(0, 1) : new Part(1, 0);
        }
        double one = (double) (low - from) / (to - from);
        double other = (double) (high - from) / (to - from);
        return new Part(Math.max(0, Math.min(one, other)), Math.min(1, Math.max(one, other)));
    }

    private Point at(double share) {
        return new Point((int) Math.round(from.x + share * (to.x - from.x)),
                (int) Math.round(from.y + share * (to.y - from.y)));
    }
}
