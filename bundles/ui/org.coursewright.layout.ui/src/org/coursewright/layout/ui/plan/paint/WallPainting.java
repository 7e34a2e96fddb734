package org.coursewright.layout.ui.plan.paint;

import java.util.Optional;

import org.coursewright.core.finding.Severity;
import org.coursewright.layout.ui.plan.shape.Heading;
import org.coursewright.layout.ui.plan.shape.PlanEdge;
import org.coursewright.layout.ui.plan.shape.WallShape;
import org.coursewright.measure.Length;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.PointList;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.SWT;

/**
 * A wall: its masonry, its faces as far as nothing runs into them, its mark, and whether something is wrong with it.
 *
 * @param wall as it lies
 * @param place of the plan on paper
 * @param ink to draw with
 * @param mark that it bears
 * @param markLeft whether the mark stands on the left of the wall if not inside it, else on the right
 * @param trouble the gravest finding about it
 * @param chosen whether it is selected
 */
public record WallPainting(WallShape wall, PlanPlace place, PlanInk ink, String mark, boolean markLeft,
        Optional<Severity> trouble, boolean chosen) implements Painting {

    private static final int AIR = 8;
    private static final int CHOSEN_LINE = 2;
    private static final int LEAST_HIT = 3;
    private static final int GAP = 2;

    @Override
    public Rectangle bounds() {
        Rectangle masonry = place.pixels(wall.outline()).getBounds().getExpanded(AIR, AIR);
        return words().map(masonry::getUnion).orElse(masonry);
    }

    @Override
    public void paint(Graphics graphics) {
        graphics.setAntialias(SWT.ON);
        graphics.setBackgroundColor(ink.masonry());
        graphics.fillPolygon(place.pixels(wall.outline()));
        graphics.setForegroundColor(chosen ? ink.basic().accent() : ink.basic().line());
        graphics.setLineWidth(chosen ? CHOSEN_LINE : 1);
        wall.edges().forEach(edge -> line(graphics, edge));
        graphics.setLineWidth(1);
        label().ifPresent(label -> {
            graphics.setForegroundColor(ink.basic().text());
            label.paint(graphics);
        });
        trouble.ifPresent(severity -> TroubleMark.paint(graphics, ink, severity, troublePlace()));
    }

    private void line(Graphics graphics, PlanEdge edge) {
        graphics.drawLine(place.pixel(edge.from()), place.pixel(edge.to()));
    }

    /** Inside the wall if it fits there, else beside it where its dimension strings are not. */
    private Optional<SlantedText> label() {
        return mark.isEmpty() ? Optional.empty() : FreeStretch.longest(wall).map(this::label);
    }

    private SlantedText label(FreeStretch stretch) {
        var size = SlantedText.size(mark);
        Point middle = place.pixel(wall.at(stretch.middle(), Length.ZERO));
        int thickness = place.scale().toPixels(wall.module().thickness());
        if (size.height <= thickness + GAP
                && size.width + 2 * GAP <= place.scale().toPixels(stretch.to().minus(stretch.from()))) {
            return SlantedText.along(wall.heading(), mark, middle);
        }
        Heading away = markLeft ? wall.heading().left() : wall.heading().left().reversed();
        int room = (int) Math.round(Math.abs(away.east()) * size.width / 2 + Math.abs(away.north()) * size.height / 2);
        return new SlantedText(mark, PlanPlace.ahead(middle, away, thickness / 2 + room + 2 * GAP), 0);
    }

    /** @return the box around its mark */
    public Optional<Rectangle> words() {
        return label().map(SlantedText::bounds);
    }

    private Point troublePlace() {
        return place
                .pixel(wall.at(FreeStretch.longest(wall).map(FreeStretch::quarter).orElse(Length.ZERO), Length.ZERO));
    }

    @Override
    public boolean isAt(int x, int y) {
        PointList outline = place.pixels(wall.outline());
        return PolygonHit.isIn(outline, x, y)
                || place.scale().toPixels(wall.distance(place.point(new Point(x, y)))) <= LEAST_HIT;
    }
}
