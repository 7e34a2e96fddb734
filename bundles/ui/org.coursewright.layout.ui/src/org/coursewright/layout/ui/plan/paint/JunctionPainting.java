package org.coursewright.layout.ui.plan.paint;

import java.util.Optional;

import org.coursewright.core.bond.LayoutOutcome;
import org.coursewright.core.bond.WallHanding;
import org.coursewright.core.geometry.Place;
import org.coursewright.core.geometry.WallMeeting.Kind;
import org.coursewright.layout.ui.plan.shape.PlanMeeting;
import org.coursewright.layout.ui.plan.shape.PlanPoint;
import org.coursewright.layout.ui.plan.shape.StoreyShape;
import org.coursewright.model.building.WallPlace;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;

/**
 * Marks the points where walls meet: a dot at a corner, a ring where one ends against another, a square where they cross or
 * go on in line. A stroke leads from a corner into the wall that runs through there in odd courses; it has a head where
 * somebody has decided so.
 *
 * @param storey with all walls
 * @param laid how the building was last laid, empty before it was
 * @param place of the plan on paper
 * @param ink to draw with
 */
public record JunctionPainting(StoreyShape storey, Optional<LayoutOutcome> laid, PlanPlace place,
        PlanInk ink) implements Painting {

    private static final int HALF = 3;
    private static final int STROKE = 16;
    private static final int STROKE_WIDTH = 3;

    @Override
    public Rectangle bounds() {
        return storey.bounds().map(box -> new Rectangle(place.pixel(box.southWest()), place.pixel(box.northEast())))
                .orElseGet(Rectangle::new).getExpanded(STROKE, STROKE);
    }

    @Override
    public void paint(Graphics graphics) {
        graphics.setForegroundColor(ink.basic().line());
        graphics.setBackgroundColor(ink.basic().line());
        storey.meetings().forEach(meeting -> paint(graphics, meeting));
        graphics.setForegroundColor(ink.basic().accent());
        graphics.setBackgroundColor(ink.basic().accent());
        graphics.setLineWidth(STROKE_WIDTH);
        storey.meetings().forEach(meeting -> meeting.ends().forEach(end -> through(graphics, meeting, end)));
        graphics.setLineWidth(1);
    }

    private void through(Graphics graphics, PlanMeeting meeting, PlanMeeting.End end) {
        if (end.isEnd()) {
            WallPlace at = end.place() == Place.START ? WallPlace.START : WallPlace.END;
            laid.flatMap(outcome -> WallHanding.at(outcome, end.wall().getMark(), at))
                    .filter(handing -> handing.throughOnOdd().equals(end.wall().getMark()))
                    .ifPresent(handing -> stroke(graphics, meeting.at(), farEnd(end), handing.isPinned()));
        }
    }

    private static PlanPoint farEnd(PlanMeeting.End end) {
        return end.place() == Place.START
                ? new PlanPoint(end.wall().getToX(), end.wall().getToY())
                : new PlanPoint(end.wall().getFromX(), end.wall().getFromY());
    }

    private void stroke(Graphics graphics, PlanPoint from, PlanPoint towards, boolean pinned) {
        Point begin = place.pixel(from);
        Point far = place.pixel(towards);
        double length = Math.max(1, Math.hypot(far.x - begin.x, far.y - begin.y));
        int x = begin.x + (int) Math.round(STROKE * (far.x - begin.x) / length);
        int y = begin.y + (int) Math.round(STROKE * (far.y - begin.y) / length);
        graphics.drawLine(begin.x, begin.y, x, y);
        if (pinned) {
            graphics.fillOval(x - HALF - 1, y - HALF - 1, 2 * HALF + 2, 2 * HALF + 2);
        }
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
