package org.coursewright.layout.ui.part;

import org.coursewright.diagram.ui.ink.Ink;
import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Rectangle;

/** An opening on its way: its outline at the place where it would be put, and above it how far along that is. */
final class DragFigure extends Figure {

    private static final int LINE = 2;
    private static final int PADDING = 4;

    private String text = "";
    private Rectangle box = new Rectangle();

    void show(Rectangle at, String words) {
        box = at;
        text = words;
        Dimension size = FigureUtilities.getTextExtents(text, getFont()).getExpanded(2 * PADDING, 2 * PADDING);
        setBounds(new Rectangle(box.x, box.y - size.height, Math.max(box.width, size.width), box.height + size.height));
        repaint();
    }

    @Override
    protected void paintFigure(Graphics graphics) {
        graphics.setForegroundColor(Ink.LIGHT.accent());
        graphics.setLineWidth(LINE);
        graphics.drawRectangle(box.x + 1, box.y + 1, box.width - LINE, box.height - LINE);
        Dimension size = FigureUtilities.getTextExtents(text, getFont());
        graphics.setBackgroundColor(Ink.LIGHT.accent());
        graphics.fillRectangle(getBounds().x, getBounds().y, size.width + 2 * PADDING, size.height + 2 * PADDING);
        graphics.setForegroundColor(Ink.LIGHT.paper());
        graphics.drawText(text, getBounds().x + PADDING, getBounds().y + PADDING);
    }
}
