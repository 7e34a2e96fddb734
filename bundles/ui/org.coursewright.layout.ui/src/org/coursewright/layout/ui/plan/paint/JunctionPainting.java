package org.coursewright.layout.ui.plan.paint;

import org.coursewright.core.geometry.WallMeeting.Kind;
import org.coursewright.layout.ui.plan.shape.PlanMeeting;
import org.coursewright.layout.ui.plan.shape.StoreyShape;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;

/**
 * Marks the points where walls meet: a dot at a corner, a ring where one ends against another, a square where they cross or
 * go on in line.
 *
 * @param storey with all walls
 * @param place of the plan on paper
 * @param ink to draw with
 */
public record JunctionPainting(StoreyShape storey, PlanPlace place, PlanInk ink) implements Painting {

    private static final int HALF = 3;

    @Override
    public Rectangle bounds() {
        return storey.bounds().map(box -> new Rectangle(place.pixel(box.southWest()), place.pixel(box.northEast())))
                .orElseGet(Rectangle::new).getExpanded(2 * HALF, 2 * HALF);
    }

    @Override
    public void paint(Graphics graphics) {
        graphics.setForegroundColor(ink.basic().line());
        graphics.setBackgroundColor(ink.basic().line());
        storey.meetings().forEach(meeting -> paint(graphics, meeting));
    }

    private void paint(Graphics graphics, PlanMeeting meeting) {
        Point at = place.pixel(meeting.at());
        Rectangle box = new Rectangle(at.x - HALF, at.y - HALF, 2 * HALF, 2 * HALF);
        if (meeting.kind() == Kind.CORNER) {
            graphics.fillOval(box);
        } else if (meeting.kind() == Kind.TEE) {
            graphics.drawOval(box);
        } else if (meeting.kind() != Kind.FREE) {
            graphics.drawRectangle(box);
        }
    }

    /** Junctions are looked at; what is pointed at are walls. */
    @Override
    public boolean isAt(int x, int y) {
        return false;
    }
}
