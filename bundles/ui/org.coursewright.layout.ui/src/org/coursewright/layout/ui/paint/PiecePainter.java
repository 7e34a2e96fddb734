package org.coursewright.layout.ui.paint;

import org.coursewright.bond.Piece;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.PointList;
import org.eclipse.draw2d.geometry.Rectangle;

/**
 * Draws pieces: a whole unit plain, a special with a line along its middle, a cut piece with a stroke across.
 *
 * @param ink to draw with
 */
public record PiecePainter(FaceInk ink) {

    private static final int LEAST_FOR_OUTLINE = 4;
    private static final int LEAST_FOR_PATTERN = 6;

    /**
     * Draws a piece by itself.
     *
     * @param graphics to draw on
     * @param kind of the piece
     * @param box pixels that it covers
     */
    public void paint(Graphics graphics, Piece.Kind kind, Rectangle box) {
        fill(graphics, kind, box);
        if (isOutlined(Math.min(box.width, box.height))) {
            graphics.setForegroundColor(ink.basic().line());
            graphics.drawRectangle(box.x, box.y, box.width - 1, box.height - 1);
            drawPattern(graphics, kind, box, Math.min(box.width, box.height));
        }
    }

    /**
     * Draws a piece in a wall. What is drawn goes by its size before rounding, lest pieces of one size, some of which come
     * out a pixel smaller, look different.
     *
     * @param graphics to draw on
     * @param kind of the piece
     * @param box pixels of what is seen of it
     * @param seen what is seen of it
     */
    void paint(Graphics graphics, Piece.Kind kind, Rectangle box, SeenPiece seen) {
        fill(graphics, kind, box);
        if (isOutlined(seen.least())) {
            graphics.setForegroundColor(ink.basic().line());
            drawOutline(graphics, box, seen);
            drawPattern(graphics, kind, box, seen.least());
        }
    }

    /** Where no joint is seen there is one line between two pieces: the left or the upper one of the next. */
    private static void drawOutline(Graphics graphics, Rectangle box, SeenPiece seen) {
        graphics.drawLine(box.x, box.y, box.right() - 1, box.y);
        graphics.drawLine(box.x, box.y, box.x, box.bottom() - 1);
        if (!seen.closedAfter()) {
            graphics.drawLine(box.right() - 1, box.y, box.right() - 1, box.bottom() - 1);
        }
        if (!seen.closedBelow()) {
            graphics.drawLine(box.x, box.bottom() - 1, box.right() - 1, box.bottom() - 1);
        }
    }

    private void fill(Graphics graphics, Piece.Kind kind, Rectangle box) {
        graphics.setBackgroundColor(ink.of(kind));
        graphics.fillRectangle(box);
    }

    private static boolean isOutlined(double least) {
        return least >= LEAST_FOR_OUTLINE;
    }

    void paintRaked(Graphics graphics, Piece.Kind kind, PointList outline, double least) {
        graphics.setBackgroundColor(ink.of(kind));
        RakedPiece.fill(graphics, outline);
        if (!isOutlined(least)) {
            return;
        }
        graphics.setForegroundColor(ink.basic().line());
        graphics.drawPolygon(outline);
        if (kind == Piece.Kind.CUT) {
            drawStroke(graphics, outline);
        }
    }

    /** From the middle of the bottom to the highest corner, which stays inside as no piece is hollow. */
    private static void drawStroke(Graphics graphics, PointList outline) {
        Point highest = outline.getFirstPoint();
        for (int i = 1; i < outline.size(); i++) {
            highest = outline.getPoint(i).y < highest.y ? outline.getPoint(i) : highest;
        }
        Rectangle box = outline.getBounds();
        if (Math.min(box.width, box.height) >= LEAST_FOR_PATTERN) {
            graphics.drawLine(box.x + box.width / 2, outline.getFirstPoint().y, highest.x, highest.y);
        }
    }

    private static void drawPattern(Graphics graphics, Piece.Kind kind, Rectangle box, double least) {
        if (least < LEAST_FOR_PATTERN) {
            return;
        }
        if (kind == Piece.Kind.SPECIAL) {
            int middle = box.y + box.height / 2;
            graphics.drawLine(box.x, middle, box.right() - 1, middle);
        } else if (kind == Piece.Kind.CUT) {
            graphics.drawLine(box.x, box.bottom() - 1, box.right() - 1, box.y);
        }
    }
}
