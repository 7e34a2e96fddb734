package org.coursewright.bond.advice.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;
import org.coursewright.bond.advice.Adjustable;
import org.coursewright.bond.advice.DimensionProfile;
import org.coursewright.bond.internal.building.LayingCost;
import org.coursewright.bond.internal.refit.FaceRuns;
import org.coursewright.bond.internal.refit.HandedBuilding;
import org.coursewright.bond.internal.refit.RefitWall;
import org.coursewright.measure.Length;
import org.coursewright.measure.Progress;

/**
 * What a wall comes to for every value of one dimension: every value is bounded by what the runs cost alone, and the
 * layouts known of other values are fitted to it.
 */
final class Profile {

    private final Adjustable adjustable;
    private final Length planned;
    private final List<Point> points = new ArrayList<>();

    /** @param runs of the wall */
    Profile(WallFace wall, FaceRuns runs, Adjustable adjustable, Terms terms) {
        this.adjustable = adjustable;
        FaceChange change = terms.change(wall, adjustable);
        Length step = terms.step();
        planned = change.planned();
        long from = -(adjustable.least().units() / -step.units());
        long to = adjustable.most().units() / step.units();
        for (long steps = from; steps <= to; steps++) {
            Length by = step.times(steps);
            change.by(by).ifPresent(face -> points.add(new Point(by, face, runs.changed(face))));
        }
    }

    /** Takes a layout of the wall as planned, and fits it to every value. */
    void fitPlanned(WallLayout layout, RefitWall same, Progress progress) {
        points.stream().filter(Point::isPlanned).forEach(point -> point.take(layout, same));
        fit(same, progress);
    }

    /** Fits a layout of this wall to every value. */
    void fit(RefitWall from, Progress progress) {
        for (Point point : points) {
            progress.checkCancelled();
            point.fit(from, progress);
        }
    }

    /**
     * Fits a layout of this wall to the values that may spare something: those with the least bounds first, and none that
     * moves as far as another, or that nobody minds, and cannot come to less.
     *
     * @param near whether values that move less are of use though they spare less than others
     */
    void fitPromising(RefitWall from, boolean near, Progress progress) {
        List<Point> fitted = new ArrayList<>();
        for (Point point : points.stream().filter(each -> each.bound().compareTo(from.cost()) < 0)
                .sorted(Point.BY_BOUND).toList()) {
            progress.checkCancelled();
            boolean beaten = fitted.stream().anyMatch(other -> other.cost().compareTo(point.bound()) <= 0
                    && (!near && !other.cost().equals(point.bound())
                            || !other.distance().isGreaterThan(point.distance())));
            if (!beaten) {
                point.fit(from, progress);
                if (point.isKnown()) {
                    fitted.add(point);
                }
            }
        }
    }

    /**
     * The value with the least bound that is not laid yet, if it may come to less than {@code cost} and than all values
     * for which a layout is known.
     */
    Optional<Point> promising(LayingCost cost) {
        return points.stream().filter(point -> !point.isTried() && !point.isPlanned())
                .filter(point -> point.bound().compareTo(cost) < 0)
                .filter(point -> best().map(Point::cost).filter(best -> point.bound().compareTo(best) >= 0).isEmpty())
                .min(Point.BY_BOUND);
    }

    /** For how many values the wall has been laid to try them out. */
    int laid() {
        return (int) points.stream().filter(Point::isTried).count();
    }

    /**
     * Lays the wall for one of the values, and fits the layout to the others.
     *
     * @param soon whether a first answer is enough
     */
    void lay(Point point, HandedBuilding building, boolean soon, Progress progress) {
        point.tryOut(building, soon, progress);
        fit(point.fitted().orElseThrow(), progress);
    }

    /** The values for which a layout is known that spares something, none that moves further for no less. */
    List<Point> sparing(LayingCost cost, Length reach) {
        List<Point> sparing = new ArrayList<>();
        LayingCost least = cost;
        for (Point point : known().stream().filter(each -> !each.distance().isGreaterThan(reach))
                .sorted((one, other) -> one.distance().compareTo(other.distance())).toList()) {
            if (point.cost().compareTo(least) < 0) {
                sparing.add(point);
                least = point.cost();
            }
        }
        return sparing;
    }

    /** The best value for which a layout is known. */
    Optional<Point> best() {
        return known().stream().min(Point.ORDER);
    }

    private List<Point> known() {
        return points.stream().filter(Point::isKnown).toList();
    }

    DimensionProfile shown() {
        return new DimensionProfile(adjustable, planned, points.stream().map(Point::shown).toList(),
                best().map(Point::change).orElse(Length.ZERO));
    }
}
