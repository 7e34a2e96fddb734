package org.coursewright.bond.advice.internal;

import java.util.Comparator;
import java.util.Optional;

import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;
import org.coursewright.bond.advice.ProfilePoint;
import org.coursewright.bond.internal.building.LayingCost;
import org.coursewright.bond.internal.refit.FaceRuns;
import org.coursewright.bond.internal.refit.HandedBuilding;
import org.coursewright.bond.internal.refit.RefitWall;
import org.coursewright.measure.Length;
import org.coursewright.measure.Progress;

/** A wall with one dimension changed: bounded, then perhaps fitted, then perhaps laid. */
final class Point {

    /** The cheapest first, of these the nearest, of these the lesser. */
    static final Comparator<Point> ORDER = Comparator.comparing(Point::cost).thenComparing(Point::distance)
            .thenComparing(point -> point.change);

    /** The same by what no layout goes below. */
    static final Comparator<Point> BY_BOUND = Comparator.comparing(Point::bound).thenComparing(Point::distance)
            .thenComparing(point -> point.change);

    private final Length change;
    private final WallFace face;
    private final FaceRuns runs;
    private final LayingCost bound;
    private Optional<RefitWall> fitted = Optional.empty();
    private Optional<WallLayout> layout = Optional.empty();
    private boolean tried;

    Point(Length change, WallFace face, FaceRuns runs) {
        this.change = change;
        this.face = face;
        this.runs = runs;
        bound = runs.bound();
    }

    Length change() {
        return change;
    }

    Length distance() {
        return change.abs();
    }

    boolean isPlanned() {
        return change.signum() == 0;
    }

    WallFace face() {
        return face;
    }

    /** What the wall comes to at least. */
    LayingCost bound() {
        return bound;
    }

    /** What the wall comes to as it is fitted or laid; the bound if it is neither. */
    LayingCost cost() {
        return layout.map(LayingCost::of).or(() -> fitted.map(RefitWall::cost)).orElse(bound);
    }

    /** Whether there is a layout that comes to {@link #cost}. */
    boolean isKnown() {
        return fitted.isPresent();
    }

    Optional<RefitWall> fitted() {
        return fitted;
    }

    Optional<WallLayout> layout() {
        return layout;
    }

    /** Fits a layout of the wall, another value of the dimension having been laid or fitted so, if that is better. */
    void fit(RefitWall other, Progress progress) {
        boolean better = fitted.map(RefitWall::cost).filter(bound::equals).isEmpty();
        if (layout.isEmpty() && better) {
            other.fit(runs, progress).filter(
                    found -> fitted.isEmpty() || found.cost().compareTo(fitted.get().cost()) < 0)
                    .ifPresent(found -> fitted = Optional.of(found));
        }
    }

    /**
     * Lays the wall, and takes the layout if it is better than the one that was fitted.
     *
     * @param soon whether a first answer is enough; otherwise all is done but the finer bound
     */
    void tryOut(HandedBuilding building, boolean soon, Progress progress) {
        tried = true;
        WallLayout laid = soon ? building.laySoon(face, progress) : building.layAsKnown(face, progress);
        RefitWall found = building.refit(runs, laid);
        if (fitted.isEmpty() || found.cost().compareTo(fitted.get().cost()) < 0) {
            fitted = Optional.of(found);
        }
    }

    boolean isTried() {
        return tried;
    }

    /** Takes a layout as the one that laying the wall gives. */
    void take(WallLayout laid, RefitWall same) {
        layout = Optional.of(laid);
        fitted = Optional.of(same);
    }

    ProfilePoint shown() {
        LayingCost cost = cost();
        return new ProfilePoint(change, Math.toIntExact(cost.unfillable()), Math.toIntExact(cost.violations()),
                Math.toIntExact(cost.cuts()), Math.toIntExact(bound.cuts()), basis());
    }

    private ProfilePoint.Basis basis() {
        if (layout.isPresent()) {
            return ProfilePoint.Basis.LAID;
        }
        return isKnown() ? ProfilePoint.Basis.FITTED : ProfilePoint.Basis.BOUND;
    }
}
