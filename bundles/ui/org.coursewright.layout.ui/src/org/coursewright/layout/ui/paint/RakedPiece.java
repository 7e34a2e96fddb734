package org.coursewright.layout.ui.paint;

import java.util.stream.DoubleStream;

import org.coursewright.layout.ui.face.FaceCourse;
import org.coursewright.layout.ui.face.PlacedPiece;
import org.coursewright.layout.ui.face.TopLine;
import org.coursewright.measure.Length;
import org.eclipse.draw2d.Graphics;
import org.eclipse.draw2d.geometry.PointList;
import org.eclipse.swt.SWT;

/** The outline of a piece that a rake cuts. */
final class RakedPiece {

    private final FacePlace place;
    private final TopLine top;

    RakedPiece(FacePlace place, TopLine top) {
        this.place = place;
        this.top = top;
    }

    /** Not smoothed: that would lay half a pixel over the course below. */
    static void fill(Graphics graphics, PointList outline) {
        graphics.setAntialias(SWT.OFF);
        graphics.fillPolygon(outline);
        graphics.setAntialias(SWT.DEFAULT);
    }

    /** Whether the top of the wall cuts a piece. */
    boolean cuts(FaceCourse course, PlacedPiece piece) {
        double needed = course.top().units();
        return top.heightAt(piece.from().units()) < needed || top.heightAt(piece.to().units()) < needed
                || top.points().stream().anyMatch(point -> point.height().isLessThan(course.top())
                        && point.offset().isGreaterThan(piece.from()) && point.offset().isLessThan(piece.to()));
    }

    /** A box, cut off by the top of the wall. */
    PointList under(Length from, Length to, Length bottom, Length highest) {
        PointList outline = new PointList();
        outline.addPoint(place.x(from), place.y(bottom));
        corners(from, to, bottom, highest).distinct().sorted().forEach(along -> {
            double height = Math.max(bottom.units(), Math.min(highest.units(), top.heightAt(along)));
            outline.addPoint(place.x(Length.ofUnits(Math.round(along))), place.y(Length.ofUnits(Math.round(height))));
        });
        outline.addPoint(place.x(to), place.y(bottom));
        return outline;
    }

    /** Where the upper outline may bend: at the sides, in points of the top, and where the top crosses the box. */
    private DoubleStream corners(Length from, Length to, Length bottom, Length highest) {
        DoubleStream bends = top.points().stream().mapToDouble(point -> point.offset().units());
        DoubleStream crossings = DoubleStream.of(bottom.units(), highest.units()).flatMap(this::crossings);
        return DoubleStream.concat(DoubleStream.of(from.units(), to.units()), DoubleStream.concat(bends, crossings)
                .filter(along -> along > from.units() && along < to.units()));
    }

    private DoubleStream crossings(double height) {
        DoubleStream.Builder found = DoubleStream.builder();
        for (int i = 1; i < top.points().size(); i++) {
            TopLine.Point start = top.points().get(i - 1);
            TopLine.Point end = top.points().get(i);
            double rise = (double) end.height().units() - start.height().units();
            double part = rise == 0 ? -1 : (height - start.height().units()) / rise;
            if (part > 0 && part < 1) {
                found.add(start.offset().units() + part * (end.offset().units() - start.offset().units()));
            }
        }
        return found.build();
    }
}
