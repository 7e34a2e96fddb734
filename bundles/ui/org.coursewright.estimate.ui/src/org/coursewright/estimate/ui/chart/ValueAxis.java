package org.coursewright.estimate.ui.chart;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

import org.coursewright.estimate.ui.part.Figures;
import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.Graphics;

/**
 * Where values lie from left to right.
 *
 * @param least value at the left
 * @param most value at the right, more than the least
 * @param left pixel of the least
 * @param right pixel of the most
 */
public record ValueAxis(double least, double most, int left, int right) {

    private static final int PIXELS_A_TICK = 70;
    private static final int TICK = 4;

    /**
     * @param value any
     * @return its pixel
     */
    public int x(double value) {
        return left + (int) Math.round((value - least) / (most - least) * (right - left));
    }

    /** @return round values to be written at the axis, from left to right */
    public List<Double> ticks() {
        double step = step((most - least) * PIXELS_A_TICK / Math.max(PIXELS_A_TICK, right - left));
        List<Double> ticks = new ArrayList<>();
        for (double tick = Math.ceil(least / step) * step; tick <= most; tick += step) {
            ticks.add(tick);
        }
        return ticks;
    }

    /** The least of 1, 2 or 5 times a power of ten that is not below. */
    private static double step(double atLeast) {
        double power = Math.pow(10, Math.floor(Math.log10(atLeast)));
        for (int factor : new int[]{1, 2, 5}) {
            if (factor * power >= atLeast) {
                return factor * power;
            }
        }
        return 10 * power;
    }

    /**
     * Draws the axis with its values below, and a faint line up from each.
     *
     * @param graphics to draw on
     * @param top where the lines end
     * @param bottom where the axis is
     * @param ink to draw with
     */
    void paint(Graphics graphics, int top, int bottom, ChartInk ink) {
        for (double tick : ticks()) {
            graphics.setForegroundColor(ink.basic().faint());
            graphics.setLineStyle(Graphics.LINE_DOT);
            graphics.drawLine(x(tick), top, x(tick), bottom + TICK);
            graphics.setLineStyle(Graphics.LINE_SOLID);
            String words = Figures.number(BigDecimal.valueOf(tick), 0);
            graphics.setForegroundColor(ink.basic().text());
            graphics.drawText(words, x(tick) - FigureUtilities.getTextWidth(words, graphics.getFont()) / 2, bottom
                    + TICK);
        }
        graphics.setForegroundColor(ink.basic().line());
        graphics.drawLine(left, bottom, right, bottom);
    }
}
