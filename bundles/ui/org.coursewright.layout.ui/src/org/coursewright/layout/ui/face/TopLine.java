package org.coursewright.layout.ui.face;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

import org.coursewright.measure.Length;
import org.coursewright.model.building.Wall;

/**
 * The top of a wall, from one outer face to the other.
 *
 * @param points from start to end, at least two
 */
public record TopLine(List<Point> points) {

    /**
     * A point of the top.
     *
     * @param offset along the wall
     * @param height above the base
     */
    public record Point(Length offset, Length height) {
    }

    static TopLine of(Wall wall, Length length) {
        List<Point> given = wall.getTopProfile().stream().map(point -> new Point(point.getOffset(), point.getHeight()))
                .sorted(Comparator.comparing(Point::offset)).toList();
        if (given.isEmpty()) {
            given = List.of(new Point(Length.ZERO, wall.getHeight()));
        }
        Point start = new Point(Length.ZERO, given.get(0).height());
        Point end = new Point(length, given.get(given.size() - 1).height());
        return new TopLine(Stream.of(Stream.of(start), given.stream(), Stream.of(end)).flatMap(each -> each).distinct()
                .toList());
    }

    /** @return the highest point above the base */
    public Length highest() {
        return points.stream().map(Point::height).max(Comparator.naturalOrder()).orElse(Length.ZERO);
    }

    /**
     * @param along the wall; before its start or after its end the height is that of the end
     * @return how high the wall is there, in 1/320 mm
     */
    public double heightAt(double along) {
        Point before = points.get(0);
        for (Point point : points) {
            if (along <= point.offset().units()) {
                double run = (double) point.offset().units() - before.offset().units();
                double part = run == 0 ? 1 : Math.max(0, (along - before.offset().units()) / run);
                return before.height().units() + part * (point.height().units() - before.height().units());
            }
            before = point;
        }
        return before.height().units();
    }
}
