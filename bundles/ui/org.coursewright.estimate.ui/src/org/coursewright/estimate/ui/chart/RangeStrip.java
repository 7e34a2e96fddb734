package org.coursewright.estimate.ui.chart;

import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;

/**
 * How far a total may be off: a strip from the first mark to the last, with each mark named.
 *
 * @param marks by rising value, at least two
 * @param unit of all values
 */
public record RangeStrip(List<Mark> marks, String unit) implements Chart {

    private static final int GAP = 10;
    private static final int WORDS = 18;
    private static final int STRIP = 20;
    private static final int AXIS = 24;
    private static final double AIR = 0.25;

    /**
     * A value that is named.
     *
     * @param value where it is
     * @param words what stands at it
     */
    public record Mark(double value, String words) {
    }

    public RangeStrip {
        marks = List.copyOf(marks);
    }

    @Override
    public int height() {
        return 2 * WORDS + STRIP + 2 * GAP + AXIS;
    }

    @Override
    public void paint(Graphics graphics, Rectangle room, ChartInk ink) {
        double first = marks.get(0).value();
        double last = marks.get(marks.size() - 1).value();
        double air = Math.max(1, (last - first) * AIR);
        ValueAxis axis = new ValueAxis(first - air, last + air, room.x + 3 * GAP,
                Math.max(room.x + 4 * GAP, room.right()
                        - 8 * GAP));
        int top = room.y + 2 * WORDS + GAP / 2;
        axis.paint(graphics, top - 2, top + STRIP + GAP / 2, ink);
        graphics.drawText(unit, axis.right() + 4 * GAP, top + STRIP + GAP / 2 + 4);
        graphics.setBackgroundColor(ink.fill(4));
        graphics.fillRectangle(axis.x(first), top, axis.x(last) - axis.x(first), STRIP);
        for (int i = 0; i < marks.size(); i++) {
            paint(graphics, marks.get(i), axis.x(marks.get(i).value()), room.y + i % 2 * WORDS, top, ink);
        }
    }

    /** Neighbours are named on two lines, so that their names do not run into one another. */
    private static void paint(Graphics graphics, Mark mark, int x, int words, int top, ChartInk ink) {
        graphics.setForegroundColor(ink.basic().text());
        graphics.setLineWidth(2);
        graphics.drawLine(x, words + WORDS - 2, x, top + STRIP);
        graphics.setLineWidth(1);
        int half = FigureUtilities.getTextWidth(mark.words(), graphics.getFont()) / 2;
        graphics.setBackgroundColor(ink.basic().paper());
        graphics.fillRectangle(x - half - 2, words, 2 * half + 4, WORDS - 2);
        graphics.drawText(mark.words(), x - half, words);
    }

    @Override
    public String spoken() {
        return marks.stream().map(Mark::words).collect(Collectors.joining(", "));
    }
}
