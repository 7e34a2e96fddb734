package org.coursewright.layout.ui.plan.paint;

import java.util.Optional;

import org.coursewright.core.finding.Severity;
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
 * @param mark that it bears, empty if there is no room for it
 * @param trouble the gravest finding about it
 * @param chosen whether it is selected
 */
public record WallPainting(WallShape wall, PlanPlace place, PlanInk ink, Optional<SlantedText> mark,
        Optional<Severity> trouble, boolean chosen) implements Painting {

    private static final int AIR = 8;
    private static final int CHOSEN_LINE = 2;
    private static final int LEAST_HIT = 3;
    private static final double TROUBLE_SHARE = 0.2;

    @Override
    public Rectangle bounds() {
        Rectangle masonry = place.pixels(wall.outline()).getBounds().getExpanded(AIR, AIR);
        return mark.map(SlantedText::bounds).map(masonry::getUnion).orElse(masonry);
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
        mark.ifPresent(label -> {
            graphics.setForegroundColor(ink.basic().text());
            label.paint(graphics);
        });
        trouble.ifPresent(severity -> TroubleMark.paint(graphics, ink, severity, troublePlace()));
    }

    private void line(Graphics graphics, PlanEdge edge) {
        graphics.drawLine(place.pixel(edge.from()), place.pixel(edge.to()));
    }

    private Point troublePlace() {
        Length at = FreeStretch.longest(wall).map(stretch -> stretch.at(TROUBLE_SHARE)).orElse(Length.ZERO);
        return place.pixel(wall.at(at, Length.ZERO));
    }

    @Override
    public boolean isAt(int x, int y) {
        PointList outline = place.pixels(wall.outline());
        return PolygonHit.isIn(outline, x, y)
                || place.scale().toPixels(wall.distance(place.point(new Point(x, y)))) <= LEAST_HIT;
    }
}
