package org.coursewright.estimate.ui.chart;

import java.util.Optional;

import org.coursewright.diagram.ui.ink.Ink;
import org.coursewright.workbench.accessible.AccessibleName;
import org.eclipse.draw2d.SWTGraphics;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

/** Shows a chart as wide as there is room. */
public final class ChartCanvas extends Canvas {

    private static final int MARGIN = 6;
    private static final int LEAST_WIDTH = 200;

    private Optional<Chart> chart = Optional.empty();

    /**
     * @param parent of the canvas
     * @param name of the chart, for those who hear the screen
     */
    public ChartCanvas(Composite parent, String name) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_BACKGROUND);
        addPaintListener(event -> paint(event.gc));
        AccessibleName.give(this, () -> name + ": " + chart.map(Chart::spoken).orElse(""));
    }

    /** @param shown from now on, or nothing */
    public void show(Optional<Chart> shown) {
        int before = height();
        chart = shown;
        if (height() != before) {
            requestLayout();
        }
        redraw();
    }

    /** @return what is shown */
    public Optional<Chart> chart() {
        return chart;
    }

    private void paint(GC gc) {
        ChartInk ink = new ChartInk(Ink.of(getParent()));
        gc.setBackground(ink.basic().paper());
        gc.fillRectangle(getClientArea());
        SWTGraphics graphics = new SWTGraphics(gc);
        graphics.setFont(getFont());
        Point size = getSize();
        chart.ifPresent(each -> each.paint(graphics, new Rectangle(MARGIN, MARGIN, size.x - 2 * MARGIN, size.y - 2
                * MARGIN), ink));
        graphics.dispose();
    }

    @Override
    public Point computeSize(int wide, int high, boolean changed) {
        return new Point(wide == SWT.DEFAULT ? LEAST_WIDTH : wide, high == SWT.DEFAULT ? height() : high);
    }

    private int height() {
        return chart.map(Chart::height).orElse(0) + 2 * MARGIN;
    }
}
