package org.coursewright.layout.ui.paint;

import java.util.List;

import org.coursewright.layout.ui.face.FaceCourse;
import org.coursewright.layout.ui.face.PlacedPiece;
import org.coursewright.layout.ui.face.TopLine;
import org.coursewright.measure.Length;
import org.eclipse.draw2d.Graphics;
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
        // the joint after the piece before may be in the clip
        int first = Math.max(0, course.firstEndingAfter(place.along(clip.x)) - 1);
        for (int i = first; i < all.size() && place.x(all.get(i).from()) <= clip.right(); i++) {
            PlacedPiece piece = all.get(i);
            SeenPiece seen = SeenPiece.of(place, course, i);
            if (course.isRaked() && raked.cuts(course, piece)) {
                pieces.paintRaked(graphics, piece.piece().kind(),
                        raked.under(seen.from(), seen.to(), seen.bottom(), course.top()), seen.least());
            } else {
                pieces.paint(graphics, piece.piece().kind(),
                        place.box(seen.from(), seen.to(), seen.bottom(), course.top()), seen);
            }
        }
    }

    private void paintBed(Graphics graphics, FaceCourse course) {
        graphics.setBackgroundColor(ink.other());
        fill(graphics, course, course.course().from(), course.course().to());
        graphics.setBackgroundColor(ink.mortar());
        course.runs().forEach(run -> fill(graphics, course, run.from(), run.to()));
    }

    private void fill(Graphics graphics, FaceCourse course, Length from, Length to) {
        Length bottom = course.course().bottom();
        if (course.isRaked()) {
            RakedPiece.fill(graphics, raked.under(from, to, bottom, course.top()));
        } else {
            graphics.fillRectangle(place.box(from, to, bottom, course.top()));
        }
    }
}
