package org.coursewright.estimate.ui.chart;

import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Rectangle;

/**
 * What moves a total, the widest on top: each bar reaches from the total with one line low to the total with it high.
 *
 * @param bars the widest first
 * @param middle total with everything as expected
 * @param unit of all values
 */
public record Tornado(List<Bar> bars, double middle, String unit) implements Chart {

    private static final int ROW = 22;
    private static final int BAR = 14;
    private static final int GAP = 10;
    private static final int AXIS = 24;
    private static final int LOW_FILL = 4;
    private static final int HIGH_FILL = 5;

    /**
     * One line.
     *
     * @param label at its left
     * @param low total if it is low
     * @param high total if it is high
     * @param lowWords at the low end
     * @param highWords at the high end
     */
    public record Bar(String label, double low, double high, String lowWords, String highWords) {
    }

    public Tornado {
        bars = List.copyOf(bars);
    }

    @Override
    public int height() {
        return bars.size() * ROW + AXIS;
    }

    @Override
    public void paint(Graphics graphics, Rectangle room, ChartInk ink) {
        int labels = widest(graphics, bars.stream().map(Bar::label).toList()) + 2 * GAP;
        int words = widest(graphics, bars.stream().map(Bar::highWords).toList()) + GAP;
        int left = room.x + labels + words;
        ValueAxis axis = new ValueAxis(least(), Math.max(least() + 1, most()), left, Math.max(left + 1, room.right()
                - words - GAP));
        int bottom = room.y + bars.size() * ROW;
        axis.paint(graphics, room.y, bottom, ink);
        graphics.drawText(unit, axis.right() + GAP, bottom + 4);
        for (int i = 0; i < bars.size(); i++) {
            paint(graphics, bars.get(i), axis, room.x + GAP, room.y + i * ROW + (ROW - BAR) / 2, ink);
        }
        graphics.setForegroundColor(ink.basic().text());
        graphics.drawLine(axis.x(middle), room.y, axis.x(middle), bottom);
    }

    private static int widest(Graphics graphics, List<String> texts) {
        return texts.stream().mapToInt(text -> FigureUtilities.getTextWidth(text, graphics.getFont())).max().orElse(0);
    }

    private double least() {
        return bars.stream().mapToDouble(Bar::low).min().orElse(middle);
    }

    private double most() {
        return bars.stream().mapToDouble(Bar::high).max().orElse(middle);
    }

    private void paint(Graphics graphics, Bar bar, ValueAxis axis, int left, int top, ChartInk ink) {
        graphics.setForegroundColor(ink.basic().text());
        graphics.drawText(bar.label(), left, top - 2);
        int low = axis.x(bar.low());
        int high = axis.x(bar.high());
        int at = Math.min(high, Math.max(low, axis.x(middle)));
        graphics.setBackgroundColor(ink.fill(LOW_FILL));
        graphics.fillRectangle(low, top, at - low, BAR);
        graphics.setBackgroundColor(ink.fill(HIGH_FILL));
        graphics.fillRectangle(at, top, high - at, BAR);
        graphics.setBackgroundColor(ink.basic().paper());
        graphics.fillText(bar.lowWords(), low - FigureUtilities.getTextWidth(bar.lowWords(), graphics.getFont()) - GAP
                / 2, top - 2);
        graphics.fillText(bar.highWords(), high + GAP / 2, top - 2);
    }

    @Override
    public String spoken() {
        return bars.stream().map(bar -> "%s %s \u2013 %s".formatted(bar.label(), bar.lowWords(), bar.highWords()))
                .collect(Collectors.joining(", "));
    }
}
