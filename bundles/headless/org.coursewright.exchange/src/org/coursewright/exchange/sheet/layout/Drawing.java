package org.coursewright.exchange.sheet.layout;

import java.util.ArrayList;
import java.util.List;

import org.coursewright.exchange.sheet.page.Anchor;
import org.coursewright.exchange.sheet.page.Area;
import org.coursewright.exchange.sheet.page.Label;
import org.coursewright.exchange.sheet.page.Mark;
import org.coursewright.exchange.sheet.page.Pen;
import org.coursewright.exchange.sheet.page.Shade;
import org.coursewright.exchange.sheet.page.Shape;
import org.coursewright.exchange.sheet.page.Spot;
import org.coursewright.exchange.sheet.page.Stroke;
import org.coursewright.exchange.sheet.page.TextMeasure;

/** A page while it is drawn. */
final class Drawing {

    private static final double HALO = 0.25;

    private final TextMeasure measure;
    private final List<Mark> marks = new ArrayList<>();

    Drawing(TextMeasure measure) {
        this.measure = measure;
    }

    List<Mark> marks() {
        return marks;
    }

    double width(String text, double size) {
        return measure.width(measure.printable(text), size);
    }

    void line(double fromX, double fromY, double toX, double toY, Pen pen) {
        marks.add(new Stroke(new Spot(fromX, fromY), new Spot(toX, toY), pen));
    }

    void shape(List<Spot> corners, Pen outline, Shade fill) {
        marks.add(new Shape(corners, outline, fill));
    }

    void box(Area area, Pen outline, Shade fill) {
        shape(List.of(new Spot(area.x(), area.y()), new Spot(area.right(), area.y()),
                new Spot(area.right(), area.top()), new Spot(area.x(), area.top())), outline, fill);
    }

    void text(double x, double y, String text, double size, Anchor anchor) {
        add(label(x, y, text, size, anchor, false));
    }

    void strong(double x, double y, String text, double size) {
        marks.add(new Label(new Spot(x, y), measure.printable(text), size, Anchor.START, false, true));
    }

    void turned(double x, double y, String text, double size, Anchor anchor) {
        add(label(x, y, text, size, anchor, true));
    }

    /** Writes a label in the middle of what is drawn already, and clears the paper under it. */
    void cleared(Label label) {
        Area area = label.area(measure);
        box(new Area(area.x() - HALO, area.y(), area.width() + 2 * HALO, area.height()), Pen.NONE, Shade.PAPER);
        add(label);
    }

    Label middle(double x, double y, String text, double size) {
        return label(x, y, text, size, Anchor.MIDDLE, false);
    }

    Area area(Label label) {
        return label.area(measure);
    }

    private void add(Label label) {
        marks.add(label);
    }

    private Label label(double x, double y, String text, double size, Anchor anchor, boolean turned) {
        return new Label(new Spot(x, y), measure.printable(text), size, anchor, turned, false);
    }
}
