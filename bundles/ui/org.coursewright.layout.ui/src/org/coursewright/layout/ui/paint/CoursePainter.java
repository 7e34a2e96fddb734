package org.coursewright.layout.ui.paint;

import java.util.List;

import org.coursewright.bond.Course;
import org.coursewright.bond.Run;
import org.coursewright.layout.ui.face.FaceCourse;
import org.coursewright.layout.ui.face.PlacedPiece;
import org.coursewright.layout.ui.face.TopLine;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.PointList;
import org.eclipse.draw2d.geometry.Rectangle;

/** Draws one course: other masonry behind, then mortar, then pieces; only what lies in the clip. */
final class CoursePainter {

    private final FacePlace place;
    private final FaceInk ink;
    private final PiecePainter pieces;
    private final RakedPiece raked;

    CoursePainter(FacePlace place, FaceInk ink, TopLine top) {
        this.place = place;
        this.ink = ink;
        this.pieces = new PiecePainter(ink);
        this.raked = new RakedPiece(place, top);
    }

    void paint(Graphics graphics, FaceCourse course, Rectangle clip) {
        paintBed(graphics, course);
        List<PlacedPiece> all = course.pieces();
        int unitBottom = place.y(course.unitBottom());
        int top = place.y(course.top());
        for (int i = course.firstEndingAfter(place.along(clip.x)); i < all.size(); i++) {
            PlacedPiece piece = all.get(i);
            int from = place.x(piece.from());
            if (from > clip.right()) {
                break;
            }
            if (course.isRaked() && raked.cuts(course, piece)) {
                pieces.paintRaked(graphics, piece.piece().kind(), raked.outline(course, piece));
            } else {
                Rectangle box = new Rectangle(from, top, place.x(piece.to()) - from, unitBottom - top);
                pieces.paint(graphics, piece.piece().kind(), box);
            }
        }
    }

    private void paintBed(Graphics graphics, FaceCourse course) {
        Course line = course.course();
        graphics.setBackgroundColor(ink.other());
        graphics.fillPolygon(raked.under(line.from(), line.to(), line.bottom(), course.top()));
        graphics.setBackgroundColor(ink.mortar());
        for (Run run : course.runs()) {
            if (course.isRaked()) {
                PointList bed = raked.under(run.from(), run.to(), line.bottom(), course.top());
                graphics.fillPolygon(bed);
            } else {
                graphics.fillRectangle(place.box(run.from(), run.to(), line.bottom(), course.top()));
            }
        }
    }
}
