package org.coursewright.layout.ui.plan.paint;

import java.util.List;
import java.util.Optional;

import org.coursewright.layout.ui.plan.dimension.Dimension;
import org.coursewright.layout.ui.plan.shape.Heading;
import org.coursewright.layout.ui.plan.shape.PlanPoint;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.PointList;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.SWT;

/**
 * A dimension string beside a wall: lines from the face, a line between them with a stroke at either end, and the length
 * beyond it, unless there is no room.
 *
 * @param dimension to be drawn
 * @param text its length in words
 * @param row where it is drawn beside the face
 * @param place of the plan on paper
 * @param ink to draw with
 * @param others boxes around other words in the plan, at which its lines from the face are broken
 * @param chosen whether it is selected
 */
public record DimensionPainting(Dimension dimension, String text, DimensionRow row, PlanPlace place, PlanInk ink,
        List<Rectangle> others, boolean chosen) implements Painting {

    private static final int OFF_FACE = 4;
    private static final int BEYOND = 4;
    private static final int STROKE = 4;
    private static final int NEAR = 4;

    private Point from() {
        return PlanPlace.ahead(place.pixel(dimension.from()), dimension.away(), row.distance());
    }

    private Point to() {
        return PlanPlace.ahead(place.pixel(dimension.to()), dimension.away(), row.distance());
    }

    private Heading along() {
        return dimension.away().left();
    }

    /** @return whether the length is written: there is room for it between the strokes, and nothing else is there */
    public boolean isLegible() {
        return !row.silent() && hasRoom();
    }

    private boolean hasRoom() {
        var size = place.lettering().size(text);
        return (row.turned() ? size.height : size.width) + 2 <= (int) Math.round(from().getDistance(to()));
    }

    private SlantedText label() {
        Point middle = new Point((from().x + to().x) / 2, (from().y + to().y) / 2);
        var size = place.lettering().size(text);
        int off = row.turned() ? size.width / 2 + STROKE + 1 : size.height / 2 + 1;
        return SlantedText.along(row.turned() ? dimension.away() : along(), text,
                PlanPlace.ahead(middle, dimension.away(), off), place.lettering());
    }

    /** @return the same without the length */
    DimensionPainting silenced() {
        return new DimensionPainting(dimension, text, row.silenced(), place, ink, others, chosen);
    }

    /** @return the box around the length, empty if it is not written */
    Optional<Rectangle> words() {
        return isLegible() ? Optional.of(label().bounds()) : Optional.empty();
    }

    /** @return the box around the line */
    Rectangle line() {
        return new Rectangle(from(), to()).getExpanded(2, 2);
    }

    /** @return the boxes around the lines from the face */
    List<Rectangle> extensions() {
        return List.of(extension(dimension.from()), extension(dimension.to()));
    }

    private Rectangle extension(PlanPoint face) {
        return new Rectangle(PlanPlace.ahead(place.pixel(face), dimension.away(), row.begin(OFF_FACE)),
                PlanPlace.ahead(place.pixel(face), dimension.away(), row.distance()));
    }

    /** @return pixels from the line to beyond the length */
    int depth() {
        var size = place.lettering().size(text);
        return row.turned() ? size.width + 2 * STROKE + 2 : DimensionRow.APART;
    }

    @Override
    public Rectangle bounds() {
        PointList points = new PointList();
        points.addPoint(place.pixel(dimension.from()));
        points.addPoint(place.pixel(dimension.to()));
        points.addPoint(from());
        points.addPoint(to());
        Rectangle lines = points.getBounds().getExpanded(BEYOND + 2, BEYOND + 2);
        return isLegible() ? lines.getUnion(label().bounds()) : lines;
    }

    @Override
    public void paint(Graphics graphics) {
        graphics.setAntialias(SWT.ON);
        graphics.setForegroundColor(chosen ? ink.basic().accent() : ink.dimension());
        extension(graphics, place.pixel(dimension.from()));
        extension(graphics, place.pixel(dimension.to()));
        graphics.drawLine(from(), to());
        graphics.setLineWidth(2);
        stroke(graphics, from());
        stroke(graphics, to());
        graphics.setLineWidth(1);
        if (isLegible()) {
            label().paint(graphics);
        }
    }

    private void extension(Graphics graphics, Point face) {
        new BrokenLine(PlanPlace.ahead(face, dimension.away(), row.begin(OFF_FACE)),
                PlanPlace.ahead(face, dimension.away(), row.distance() + BEYOND)).paint(graphics, others);
    }

    private void stroke(Graphics graphics, Point at) {
        Heading slanting = Heading.ofDegrees(along().degrees() + 45);
        graphics.drawLine(PlanPlace.ahead(at, slanting, STROKE), PlanPlace.ahead(at, slanting, -STROKE));
    }

    /** @return where somebody types another length */
    public Rectangle textPlace() {
        return label().bounds();
    }

    @Override
    public boolean isAt(int x, int y) {
        return isLegible() && label().bounds().contains(x, y) || isNearLine(x, y);
    }

    private boolean isNearLine(int x, int y) {
        double wide = to().x - from().x;
        double high = to().y - from().y;
        double length = Math.max(1, Math.hypot(wide, high));
        double along = ((x - from().x) * wide + (y - from().y) * high) / length;
        double across = Math.abs((x - from().x) * high - (y - from().y) * wide) / length;
        return along >= 0 && along <= length && across <= NEAR;
    }
}
