package org.coursewright.layout.ui.part;

import org.coursewright.diagram.ui.ink.Ink;
import org.coursewright.layout.ui.paint.FaceInk;
import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Rectangle;

/** An opening in the face of a wall, with its mark and its size in the middle, as far as they fit. */
final class OpeningFigure extends Figure {

    private static final int GAP = 4;

    private FaceInk ink = FaceInk.with(Ink.LIGHT);
    private String text = "";
    private String shortText = "";

    void show(FaceInk shownInk, String mark, String markAndSize) {
        if (!ink.equals(shownInk) || !shortText.equals(mark) || !text.equals(markAndSize)) {
            ink = shownInk;
            shortText = mark;
            text = markAndSize;
            repaint();
        }
    }

    @Override
    protected void paintFigure(Graphics graphics) {
        Rectangle box = getBounds();
        graphics.setBackgroundColor(ink.basic().paper());
        graphics.fillRectangle(box);
        graphics.setForegroundColor(ink.basic().line());
        graphics.drawRectangle(box.x, box.y, box.width - 1, box.height - 1);
        write(graphics, fits(text, box) ? text : shortText, box);
    }

    private void write(Graphics graphics, String words, Rectangle box) {
        Dimension size = sizeOf(words);
        if (size.width + GAP > box.width || size.height > box.height) {
            return;
        }
        graphics.setForegroundColor(ink.basic().text());
        int y = box.y + (box.height - size.height) / 2;
        for (String line : words.split("\n")) {
            Dimension wide = sizeOf(line);
            graphics.drawText(line, box.x + (box.width - wide.width) / 2, y);
            y += wide.height;
        }
    }

    private boolean fits(String words, Rectangle box) {
        Dimension size = sizeOf(words);
        return size.width + GAP <= box.width && size.height <= box.height;
    }

    private Dimension sizeOf(String words) {
        return FigureUtilities.getTextExtents(words, getFont());
    }
}
