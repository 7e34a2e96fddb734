package org.coursewright.bond.advice.internal;

import java.util.Comparator;
import java.util.Optional;

import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;
import org.coursewright.bond.advice.ProfilePoint;
import org.coursewright.bond.internal.HandedBuilding;
import org.coursewright.bond.internal.LayingCost;
import org.coursewright.measure.Length;
import org.coursewright.measure.Progress;

/** A wall with one dimension changed: first bounded, then perhaps laid. */
final class Point {

    /** The cheapest first, of these the nearest, of these the lesser. */
    static final Comparator<Point> ORDER = Comparator.comparing(Point::cost).thenComparing(point -> point.change.abs())
            .thenComparing(point -> point.change);

    private final Length change;
    private final WallFace face;
    private LayingCost cost;
    private Optional<WallLayout> layout = Optional.empty();

    Point(Length change, WallFace face, LayingCost bound) {
        this.change = change;
        this.face = face;
        cost = bound;
    }

    Length change() {
        return change;
    }

    boolean isPlanned() {
        return change.signum() == 0;
    }

    WallFace face() {
        return face;
    }

    /** What the wall comes to if it is laid, otherwise what it comes to at least. */
    LayingCost cost() {
        return cost;
    }

    Optional<WallLayout> layout() {
        return layout;
    }

    void tighten(HandedBuilding building, Progress progress) {
        if (layout.isEmpty()) {
            cost = building.tightBound(face, progress);
        }
    }

    void lay(HandedBuilding building, Progress progress) {
        if (layout.isEmpty()) {
            WallLayout laid = building.lay(face, progress);
            layout = Optional.of(laid);
            cost = LayingCost.of(laid);
        }
    }

    ProfilePoint shown() {
        return new ProfilePoint(change, Math.toIntExact(cost.unfillable()), Math.toIntExact(cost.violations()),
                Math.toIntExact(cost.cuts()),
                layout.isPresent() ? ProfilePoint.Basis.LAID : ProfilePoint.Basis.BOUND);
    }
}
