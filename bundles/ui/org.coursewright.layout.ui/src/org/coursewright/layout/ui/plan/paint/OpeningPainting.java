package org.coursewright.layout.ui.plan.paint;

import java.util.List;
import java.util.Optional;

import org.coursewright.core.finding.Severity;
import org.coursewright.layout.ui.plan.shape.PlanPoint;
import org.coursewright.layout.ui.plan.shape.WallShape;
import org.coursewright.measure.Length;
import org.coursewright.model.building.OpeningKind;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.SWT;

/**
 * An opening: a gap in its wall with its jambs. A window has two lines along it, a door its threshold, anything else a
 * cross.
 *
 * @param wall that it is in
 * @param offset from the outer start face to the near jamb
 * @param width between jambs
 * @param kind what it is for
 * @param mark that it bears, empty if there is no room for it
 * @param thresholdLeft whether a door's threshold is on the left of the wall, else on the right
 * @param place of the plan on paper
 * @param ink to draw with
 * @param trouble the gravest finding about it
 * @param chosen whether it is selected
 */
public record OpeningPainting(WallShape wall, Length offset, Length width, OpeningKind kind,
        Optional<SlantedText> mark, boolean thresholdLeft, PlanPlace place, PlanInk ink, Optional<Severity> trouble,
        boolean chosen) implements Painting {

    private static final int AIR = 8;
    private static final int CHOSEN_LINE = 2;
    private static final double THIRD = 1.0 / 3;

    @Override
    public Rectangle bounds() {
        Rectangle gap = place.pixels(corners()).getBounds();
        return mark.map(SlantedText::bounds).map(gap::getUnion).orElse(gap).getExpanded(AIR, AIR);
    }

    /** @return the four corners of the gap in plan */
    public List<PlanPoint> corners() {
        return wall.part(offset, width);
    }

    @Override
    public void paint(Graphics graphics) {
        graphics.setAntialias(SWT.ON);
        graphics.setBackgroundColor(ink.basic().paper());
        graphics.fillPolygon(place.pixels(corners()));
        graphics.setForegroundColor(chosen ? ink.basic().accent() : ink.basic().line());
        graphics.setLineWidth(chosen ? CHOSEN_LINE : 1);
        across(graphics, offset);
        across(graphics, offset.plus(width));
        switch (kind) {
            case WINDOW -> {
                along(graphics, -1);
                along(graphics, 1);
                along(graphics, THIRD / 2);
                along(graphics, -THIRD / 2);
            }
            case DOOR -> along(graphics, thresholdLeft ? 1 : -1);
            case PASSAGE -> {
                /* nothing but its jambs */ }
            case VENT, NICHE, OTHER -> cross(graphics);
        }
        graphics.setLineWidth(1);
        graphics.setForegroundColor(ink.basic().text());
        mark.ifPresent(words -> words.paint(graphics));
        trouble.ifPresent(severity -> TroubleMark.paint(graphics, ink, severity, middle()));
    }

    private void across(Graphics graphics, Length at) {
        Length half = wall.module().half();
        graphics.drawLine(place.pixel(wall.at(at, half)), place.pixel(wall.at(at, half.negated())));
    }

    private void along(Graphics graphics, double share) {
        Length left = Length.ofUnits(Math.round(share * wall.module().half().units()));
        graphics.drawLine(place.pixel(wall.at(offset, left)), place.pixel(wall.at(offset.plus(width), left)));
    }

    private void cross(Graphics graphics) {
        List<PlanPoint> corners = corners();
        graphics.drawLine(place.pixel(corners.get(0)), place.pixel(corners.get(2)));
        graphics.drawLine(place.pixel(corners.get(1)), place.pixel(corners.get(3)));
    }

    private Point middle() {
        return place.pixel(wall.at(offset.plus(Length.ofUnits(width.units() / 2)), Length.ZERO));
    }

    @Override
    public boolean isAt(int x, int y) {
        return PolygonHit.isIn(place.pixels(corners()), x, y)
                || mark.filter(words -> words.bounds().contains(x, y)).isPresent();
    }
}
