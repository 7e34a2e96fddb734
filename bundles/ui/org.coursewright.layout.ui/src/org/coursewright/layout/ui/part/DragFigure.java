package org.coursewright.layout.ui.part;

import org.coursewright.diagram.ui.ink.Ink;
import org.eclipse.draw2d.Figure;
import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.IFigure;
import org.eclipse.draw2d.Viewport;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Rectangle;

/** An opening on its way: its outline at the place where it would be put, and above it how far along that is. */
final class DragFigure extends Figure {

    private static final int LINE = 2;
    private static final int PADDING = 4;

    private String text = "";
    private Rectangle box = new Rectangle();
    private Rectangle label = new Rectangle();

    void show(Rectangle at, String words) {
        box = at;
        text = words;
        Dimension size = FigureUtilities.getTextExtents(text, getFont()).getExpanded(2 * PADDING, 2 * PADDING);
        label = new Rectangle(labelLeft(size.width), box.y - size.height, size.width, size.height);
        setBounds(box.getUnion(label));
        repaint();
    }

    @Override
    protected void paintFigure(Graphics graphics) {
        graphics.setForegroundColor(Ink.LIGHT.accent());
        graphics.setLineWidth(LINE);
        graphics.drawRectangle(box.x + 1, box.y + 1, box.width - LINE, box.height - LINE);
        graphics.setBackgroundColor(Ink.LIGHT.accent());
        graphics.fillRectangle(label);
        graphics.setForegroundColor(Ink.LIGHT.paper());
        graphics.drawText(text, label.x + PADDING, label.y + PADDING);
    }

    /** Words that would reach beyond what is seen begin further left, so that all of them can be read. */
    private int labelLeft(int width) {
        int right = getParent() == null ? Integer.MAX_VALUE : seen().right();
        return Math.max(0, Math.min(box.x, right - width));
    }

    private Rectangle seen() {
        IFigure figure = getParent();
        while (figure != null && !(figure instanceof Viewport)) {
            figure = figure.getParent();
        }
        return figure instanceof Viewport port
                ? new Rectangle(port.getViewLocation(), port.getClientArea().getSize())
                : getParent().getBounds();
    }
}
