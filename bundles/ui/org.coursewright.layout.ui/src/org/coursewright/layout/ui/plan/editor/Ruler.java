package org.coursewright.layout.ui.plan.editor;

import java.util.List;
import java.util.function.Supplier;

import org.coursewright.diagram.ui.scale.DiagramScale;
import org.coursewright.layout.ui.plan.dimension.Figures;
import org.coursewright.layout.ui.plan.paint.PlanPlace;
import org.coursewright.layout.ui.plan.part.PlanState;
import org.coursewright.layout.ui.plan.shape.PlanPoint;
import org.coursewright.measure.DisplayUnit;
import org.coursewright.measure.Length;
import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Transform;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

/** A ruler along the top or the left of a plan, in the project's unit from the plan's origin. */
final class Ruler extends Canvas {

    /** Pixels across. */
    static final int BREADTH = 18;

    private static final int LEAST_APART = 56;
    private static final int AIR = 10;
    private static final int TICK = 5;
    private static final List<Length> INCHES = List.of(Length.ofInches(6), Length.ofInches(12), Length.ofInches(24),
            Length.ofInches(60), Length.ofInches(120), Length.ofInches(240), Length.ofInches(600),
            Length.ofInches(1200), Length.ofInches(6000));
    private static final List<Length> MILLIMETRES = List.of(Length.ofMillimetres(100), Length.ofMillimetres(200),
            Length.ofMillimetres(500), Length.ofMillimetres(1000), Length.ofMillimetres(2000),
            Length.ofMillimetres(5000), Length.ofMillimetres(10_000), Length.ofMillimetres(20_000),
            Length.ofMillimetres(100_000));

    private final boolean level;
    private final GraphicalViewer viewer;
    private final Supplier<PlanState> state;
    private int pointer = -1;

    /**
     * @param parent of the ruler
     * @param level whether it is along the top, else along the left
     * @param viewer of the plan
     * @param state what is shown
     */
    Ruler(Composite parent, boolean level, GraphicalViewer viewer, Supplier<PlanState> state) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
        this.level = level;
        this.viewer = viewer;
        this.state = state;
        addListener(SWT.Paint, this::paint);
        FigureCanvas canvas = (FigureCanvas) viewer.getControl();
        (level ? canvas.getViewport().getHorizontalRangeModel() : canvas.getViewport().getVerticalRangeModel())
                .addPropertyChangeListener(change -> redraw());
        canvas.addListener(SWT.MouseMove, event -> {
            pointer = level ? event.x : event.y;
            redraw();
        });
    }

    private void paint(Event event) {
        PlanState shown = state.get();
        GC gc = event.gc;
        gc.setBackground(shown.ink().basic().paper());
        gc.fillRectangle(getClientArea());
        gc.setForeground(shown.ink().basic().faint());
        Point size = getSize();
        if (level) {
            gc.drawLine(0, size.y - 1, size.x, size.y - 1);
        } else {
            gc.drawLine(size.x - 1, 0, size.x - 1, size.y);
        }
        ticks(gc, shown);
        gc.setForeground(shown.ink().basic().accent());
        gc.drawLine(level ? pointer : 0, level ? 0 : pointer, level ? pointer : BREADTH, level ? BREADTH : pointer);
    }

    private void ticks(GC gc, PlanState shown) {
        DiagramScale scale = DiagramScale.of(viewer);
        PlanPlace place = shown.place(scale);
        var corner = ((FigureCanvas) viewer.getControl()).getViewport().getViewLocation();
        int length = level ? getSize().x : getSize().y;
        PlanPoint begin = place.point(corner.getTranslated(0, level ? 0 : length));
        PlanPoint end = place.point(corner.getTranslated(length, 0));
        Length at = level ? begin.x() : begin.y();
        Figures figures = new Figures(shown.format());
        Length step = step(gc, scale, figures, level ? List.of(begin.x(), end.x()) : List.of(begin.y(), end.y()));
        Length tick = tick(at, step);
        while (true) {
            int pixel = level ? place.x(tick) - corner.x : place.y(tick) - corner.y;
            if (level ? pixel > length : pixel < 0) {
                return;
            }
            tick(gc, shown, pixel, figures.of(tick));
            tick = tick.plus(step);
        }
    }

    private void tick(GC gc, PlanState shown, int pixel, String text) {
        gc.setForeground(shown.ink().basic().faint());
        if (level) {
            gc.drawLine(pixel, BREADTH - TICK, pixel, BREADTH);
        } else {
            gc.drawLine(BREADTH - TICK, pixel, BREADTH, pixel);
        }
        gc.setForeground(shown.ink().basic().text());
        int wide = gc.textExtent(text).x + 2;
        boolean whole = level ? pixel >= 0 && pixel + wide <= getSize().x : pixel >= wide && pixel <= getSize().y;
        if (!whole) {
            return;
        }
        if (level) {
            gc.drawText(text, pixel + 2, 0, true);
        } else {
            turned(gc, pixel, text);
        }
    }

    private void turned(GC gc, int pixel, String text) {
        Transform turn = new Transform(getDisplay());
        turn.translate(0, pixel - 2);
        turn.rotate(-90);
        gc.setTransform(turn);
        gc.drawText(text, 0, 0, true);
        gc.setTransform(null);
        turn.dispose();
    }

    /** The last tick before a length, or there. */
    private static Length tick(Length at, Length step) {
        return step.times(Math.floorDiv(at.units(), step.units()));
    }

    /** The least round step that leaves room for its figures, of which those at either end are the longest. */
    private static Length step(GC gc, DiagramScale scale, Figures figures, List<Length> ends) {
        List<Length> steps = figures.format().unit() == DisplayUnit.MILLIMETRE ? MILLIMETRES : INCHES;
        return steps.stream().filter(step -> ends.stream().mapToInt(end -> gc.textExtent(figures.of(tick(end, step))).x)
                .allMatch(wide -> scale.toPixels(step) >= Math.max(LEAST_APART, wide + AIR)))
                .findFirst().orElse(steps.get(steps.size() - 1));
    }
}
