package org.coursewright.exchange.sheet.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.coursewright.exchange.sheet.page.Area;
import org.coursewright.exchange.sheet.page.Pen;
import org.coursewright.exchange.sheet.page.Spot;
import org.coursewright.exchange.sheet.page.Stroke;

/**
 * A convex outline, corners against the clock.
 *
 * @param corners none if nothing is left of it
 */
record Convex(List<Spot> corners) {

    private static final double LEAST_LENGTH = 0.01;

    Convex {
        corners = List.copyOf(corners);
    }

    /** @return what lies left of the line from {@code from} to {@code to} (Sutherland and Hodgman 1974) */
    Convex leftOf(Spot from, Spot to) {
        List<Spot> kept = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Spot corner = corners.get(i);
            Spot next = corners.get((i + 1) % corners.size());
            double here = side(from, to, corner);
            double there = side(from, to, next);
            if (here >= 0) {
                kept.add(corner);
            }
            if (here < 0 != there < 0) {
                kept.add(between(corner, next, here / (here - there)));
            }
        }
        return new Convex(kept.size() < 3 ? List.of() : kept);
    }

    boolean isEmpty() {
        return corners.isEmpty();
    }

    /** @return whether all of an area lies in it */
    boolean holds(Area area) {
        return Stream.of(new Spot(area.x(), area.y()), new Spot(area.right(), area.y()),
                new Spot(area.right(), area.top()), new Spot(area.x(), area.top())).allMatch(this::holds);
    }

    /** @return the middle of its corners */
    Spot middle() {
        return new Spot(corners.stream().mapToDouble(Spot::x).average().orElse(0),
                corners.stream().mapToDouble(Spot::y).average().orElse(0));
    }

    /** @return corners moved inwards, so that a line drawn along them with a pen stays within this outline */
    List<Spot> within(Pen pen) {
        Spot middle = middle();
        double half = pen.width() / 2;
        return corners.stream().map(corner -> new Spot(corner.x() - Math.signum(corner.x() - middle.x()) * half,
                corner.y() - Math.signum(corner.y() - middle.y()) * half)).toList();
    }

    /** @return hatching at 45 degrees, the lines of neighbours in line with one another */
    List<Stroke> hatch(double spacing) {
        List<Stroke> lines = new ArrayList<>();
        double low = corners.stream().mapToDouble(Convex::diagonal).min().orElse(0);
        double high = corners.stream().mapToDouble(Convex::diagonal).max().orElse(0);
        for (double at = Math.ceil(low / spacing) * spacing; at < high; at += spacing) {
            double line = at;
            List<Spot> crossings = crossings(line);
            if (crossings.size() == 2 && Math.abs(crossings.get(0).x() - crossings.get(1).x()) > LEAST_LENGTH) {
                lines.add(new Stroke(crossings.get(0), crossings.get(1), Pen.HAIR));
            }
        }
        return lines;
    }

    private List<Spot> crossings(double line) {
        List<Spot> crossings = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Spot corner = corners.get(i);
            Spot next = corners.get((i + 1) % corners.size());
            double here = diagonal(corner) - line;
            double there = diagonal(next) - line;
            if (here < 0 != there < 0) {
                crossings.add(between(corner, next, here / (here - there)));
            }
        }
        return crossings;
    }

    private boolean holds(Spot spot) {
        for (int i = 0; i < corners.size(); i++) {
            if (side(corners.get(i), corners.get((i + 1) % corners.size()), spot) < 0) {
                return false;
            }
        }
        return true;
    }

    private static double diagonal(Spot spot) {
        return spot.x() - spot.y();
    }

    private static double side(Spot from, Spot to, Spot spot) {
        return (to.x() - from.x()) * (spot.y() - from.y()) - (to.y() - from.y()) * (spot.x() - from.x());
    }

    private static Spot between(Spot from, Spot to, double part) {
        return new Spot(from.x() + part * (to.x() - from.x()), from.y() + part * (to.y() - from.y()));
    }
}
