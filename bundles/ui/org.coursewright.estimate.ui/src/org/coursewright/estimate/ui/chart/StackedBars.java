package org.coursewright.estimate.ui.chart;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;

/**
 * Bars that lie, one below the other, each made of the same parts; over each, how far its end may move.
 *
 * @param parts names of the parts, in the order in which they are stacked
 * @param bars from the top down
 * @param unit of all values, written at the axis
 */
public record StackedBars(List<String> parts, List<Bar> bars, String unit) implements Chart {

    private static final int ROW = 28;
    private static final int BAR = 16;
    private static final int GAP = 10;
    private static final int AXIS = 24;
    private static final int LEGEND = 22;
    private static final int SWATCH = 12;
    private static final double AIR = 1.02;

    /**
     * One bar.
     *
     * @param label at its left
     * @param values of the parts, none negative
     * @param end its sum in words, at its right
     * @param range how far its end may move
     */
    public record Bar(String label, List<Double> values, String end, Optional<Range> range) {

        public Bar {
            values = List.copyOf(values);
        }

        private double sum() {
            return values.stream().mapToDouble(Double::doubleValue).sum();
        }

        private double farthest() {
            return Math.max(sum(), range.map(Range::high).orElse(0.0));
        }
    }

    /**
     * From where to where an end may move.
     *
     * @param low end
     * @param middle as often above as below
     * @param high end
     */
    public record Range(double low, double middle, double high) {
    }

    public StackedBars {
        parts = List.copyOf(parts);
        bars = List.copyOf(bars);
    }

    @Override
    public int height() {
        return bars.size() * ROW + AXIS + LEGEND + GAP;
    }

    @Override
    public void paint(Graphics graphics, Rectangle room, ChartInk ink) {
        int labels = widest(graphics, bars.stream().map(Bar::label).toList()) + 2 * GAP;
        int ends = widest(graphics, bars.stream().map(Bar::end).toList()) + 2 * GAP;
        double most = bars.stream().mapToDouble(Bar::farthest).max().orElse(1) * AIR;
        ValueAxis axis = new ValueAxis(0, Math.max(1, most), room.x + labels, Math.max(room.x + labels + 1, room.right()
                - ends));
        int bottom = room.y + bars.size() * ROW;
        if (most > 0) {
            axis.paint(graphics, room.y, bottom, ink);
            graphics.drawText(unit, axis.right() + 3 * GAP, bottom + 4);
        }
        for (int i = 0; i < bars.size(); i++) {
            paint(graphics, bars.get(i), axis, new Rectangle(room.x, room.y + i * ROW, labels, ROW), ink);
        }
        paintLegend(graphics, room.x + GAP, bottom + AXIS, ink);
    }

    private static int widest(Graphics graphics, List<String> texts) {
        return texts.stream().mapToInt(text -> FigureUtilities.getTextWidth(text, graphics.getFont())).max().orElse(0);
    }

    private void paint(Graphics graphics, Bar bar, ValueAxis axis, Rectangle row, ChartInk ink) {
        int top = row.y + (ROW - BAR) / 2;
        graphics.setForegroundColor(ink.basic().text());
        graphics.drawText(bar.label(), row.x + GAP, top - 1);
        double sum = 0;
        for (int i = 0; i < bar.values().size(); i++) {
            int from = axis.x(sum);
            sum += bar.values().get(i);
            graphics.setBackgroundColor(ink.fill(i));
            graphics.fillRectangle(from, top, axis.x(sum) - from, BAR);
        }
        bar.range().ifPresent(range -> paint(graphics, range, axis, top + BAR / 2, ink));
        graphics.setForegroundColor(ink.basic().text());
        graphics.setBackgroundColor(ink.basic().paper());
        graphics.fillText(bar.end(), axis.x(bar.farthest()) + GAP / 2, top);
    }

    /** A line from low to high with a stroke at its ends and its middle, on a strip of paper so that it is seen on any fill. */
    private static void paint(Graphics graphics, Range range, ValueAxis axis, int middle, ChartInk ink) {
        graphics.setBackgroundColor(ink.basic().paper());
        graphics.fillRectangle(axis.x(range.low()) - 1, middle - 2, axis.x(range.high()) - axis.x(range.low()) + 2, 5);
        graphics.setForegroundColor(ink.basic().text());
        graphics.drawLine(axis.x(range.low()), middle, axis.x(range.high()), middle);
        for (double value : new double[]{range.low(), range.middle(), range.high()}) {
            graphics.drawLine(axis.x(value), middle - 4, axis.x(value), middle + 4);
        }
    }

    private void paintLegend(Graphics graphics, int left, int top, ChartInk ink) {
        int x = left;
        for (int i = 0; i < parts.size(); i++) {
            graphics.setBackgroundColor(ink.fill(i));
            graphics.fillRectangle(x, top + 3, SWATCH, SWATCH);
            graphics.setForegroundColor(ink.basic().text());
            graphics.drawText(parts.get(i), x + SWATCH + 4, top);
            x += SWATCH + 4 + FigureUtilities.getTextWidth(parts.get(i), graphics.getFont()) + GAP + 4;
        }
    }

    @Override
    public String spoken() {
        return bars.stream().map(bar -> bar.label() + " " + bar.end()).collect(Collectors.joining(", "));
    }
}
