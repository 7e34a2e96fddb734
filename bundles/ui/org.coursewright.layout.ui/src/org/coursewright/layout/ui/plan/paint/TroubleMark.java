package org.coursewright.layout.ui.plan.paint;

import org.coursewright.core.finding.Severity;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.PointList;

/** A small triangle with a stroke in it, where a finding is about something. */
final class TroubleMark {

    private static final int HALF = 7;

    private TroubleMark() {
    }

    static void paint(Graphics graphics, PlanInk ink, Severity severity, Point at) {
        PointList triangle = new PointList();
        triangle.addPoint(at.x, at.y - HALF);
        triangle.addPoint(at.x + HALF, at.y + HALF - 1);
        triangle.addPoint(at.x - HALF, at.y + HALF - 1);
        graphics.setBackgroundColor(ink.of(severity));
        graphics.fillPolygon(triangle);
        graphics.setForegroundColor(ink.basic().paper());
        graphics.drawLine(at.x, at.y - 2, at.x, at.y + 2);
        graphics.drawPoint(at.x, at.y + 4);
    }
}
