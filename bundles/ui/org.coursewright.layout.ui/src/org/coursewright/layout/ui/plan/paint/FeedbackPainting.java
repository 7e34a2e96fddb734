package org.coursewright.layout.ui.plan.paint;

import java.util.List;

import org.coursewright.layout.ui.plan.shape.PlanPoint;
import org.coursewright.layout.ui.plan.snap.SnapMark;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.PointList;
import org.eclipse.draw2d.geometry.Rectangle;

/**
 * What is on its way while the mouse moves: outlines of what will be, marks of what it is drawn to, and the length to be
 * read.
 *
 * @param outlines of what will be
 * @param marks of what is drawn to
 * @param words to be read
 * @param at where the words are about
 * @param place of the plan on paper
 * @param ink to draw with
 * @param right pixels to the right at which the paper that is seen ends; words that would reach beyond begin further left
 */
public record FeedbackPainting(List<List<PlanPoint>> outlines, List<SnapMark> marks, String words, PlanPoint at,
        PlanPlace place, PlanInk ink, int right) implements Painting {

    private static final int LINE = 2;
    private static final int PADDING = 4;
    private static final int OFF = 16;
    private static final int HALF = 5;
    private static final int[] DASHES = {4, 3};

    public FeedbackPainting {
        outlines = List.copyOf(outlines);
        marks = List.copyOf(marks);
    }

    /** Words wherever there is room for them. */
    public FeedbackPainting(List<List<PlanPoint>> outlines, List<SnapMark> marks, String words, PlanPoint at,
            PlanPlace place, PlanInk ink) {
        this(outlines, marks, words, at, place, ink, Integer.MAX_VALUE);
    }

    /**
     * @param end pixels to the right at which the paper that is seen ends
     * @return the same with its words before that
     */
    public FeedbackPainting before(int end) {
        return new FeedbackPainting(outlines, marks, words, at, place, ink, end);
    }

    private Rectangle label() {
        Dimension size = place.lettering().size(words).getExpanded(2 * PADDING, 2 * PADDING);
        Point point = place.pixel(at);
        int x = Math.max(0, Math.min(point.x + OFF, right - size.width));
        return new Rectangle(x, point.y - OFF - size.height, size.width, size.height);
    }

    @Override
    public Rectangle bounds() {
        Rectangle all = label().getCopy();
        outlines.forEach(outline -> all.union(place.pixels(outline).getBounds()));
        marks.forEach(mark -> {
            all.union(place.pixel(mark.from()));
            all.union(place.pixel(mark.to()));
        });
        return all.getExpanded(2 * HALF, 2 * HALF);
    }

    @Override
    public void paint(Graphics graphics) {
        graphics.setForegroundColor(ink.basic().accent());
        graphics.setLineWidth(LINE);
        outlines.forEach(outline -> outline(graphics, place.pixels(outline)));
        graphics.setForegroundColor(ink.snap());
        marks.forEach(mark -> mark(graphics, mark));
        graphics.setLineWidth(1);
        if (!words.isEmpty()) {
            words(graphics);
        }
    }

    private static void outline(Graphics graphics, PointList points) {
        if (points.size() > 2) {
            graphics.drawPolygon(points);
        } else {
            graphics.drawPolyline(points);
        }
    }

    private void mark(Graphics graphics, SnapMark mark) {
        Point to = place.pixel(mark.to());
        Rectangle box = new Rectangle(to.x - HALF, to.y - HALF, 2 * HALF, 2 * HALF);
        switch (mark.kind()) {
            case END -> graphics.drawRectangle(box);
            case ON_WALL -> graphics.drawOval(box);
            case MODULE -> {
                graphics.drawLine(to.x - HALF, to.y, to.x + HALF, to.y);
                graphics.drawLine(to.x, to.y - HALF, to.x, to.y + HALF);
            }
            case IN_LINE, ANGLE -> dashed(graphics, place.pixel(mark.from()), to);
        }
    }

    private static void dashed(Graphics graphics, Point from, Point to) {
        graphics.setLineWidth(1);
        graphics.setLineDash(DASHES);
        graphics.drawLine(from, to);
        graphics.setLineStyle(Graphics.LINE_SOLID);
        graphics.setLineWidth(LINE);
    }

    private void words(Graphics graphics) {
        Rectangle box = label();
        graphics.setBackgroundColor(ink.basic().accent());
        graphics.fillRectangle(box);
        graphics.setForegroundColor(ink.basic().paper());
        graphics.setFont(place.lettering().font());
        graphics.drawText(words, box.x + PADDING, box.y + PADDING);
    }

    @Override
    public boolean isAt(int x, int y) {
        return false;
    }
}
