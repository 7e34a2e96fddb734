package org.coursewright.bond.advice.internal;

import java.util.ArrayList;
import java.util.List;

import org.coursewright.bond.WallFace;
import org.coursewright.bond.advice.Adjustable;
import org.coursewright.bond.advice.DimensionProfile;
import org.coursewright.bond.internal.HandedBuilding;
import org.coursewright.bond.internal.LayingCost;
import org.coursewright.measure.Length;
import org.coursewright.measure.Progress;

/**
 * What a wall comes to for every value of one dimension. Every value is bounded by what the runs cost alone, the most
 * promising ones by what they cost together, and of these a few are laid.
 */
final class Profile {

    private static final int TIGHTENED = 6;

    private final HandedBuilding building;
    private final Adjustable adjustable;
    private final Length planned;
    private final List<Point> points = new ArrayList<>();

    Profile(HandedBuilding building, WallFace wall, Adjustable adjustable, Terms terms) {
        this.building = building;
        this.adjustable = adjustable;
        FaceChange change = terms.change(wall, adjustable);
        Length step = terms.step();
        planned = change.planned();
        long from = -(adjustable.least().units() / -step.units());
        long to = adjustable.most().units() / step.units();
        for (long steps = from; steps <= to; steps++) {
            Length by = step.times(steps);
            change.by(by).ifPresent(face -> points.add(new Point(by, face, building.bound(face))));
        }
    }

    /**
     * Lays the wall for at most so many values that may come to less than {@code cost}.
     *
     * @param reach how far the dimension may change
     * @return those laid, the wall as it is not among them
     */
    List<Point> lay(LayingCost cost, Length reach, int most, Progress progress) {
        List<Point> laid = new ArrayList<>();
        LayingCost least = cost;
        for (Point point : promising(cost, reach, progress)) {
            progress.checkCancelled();
            if (laid.size() < most && point.cost().compareTo(least) < 0) {
                point.lay(building, progress);
                laid.add(point);
                least = point.cost().compareTo(least) < 0 ? point.cost() : least;
            }
        }
        return laid;
    }

    private List<Point> promising(LayingCost cost, Length reach, Progress progress) {
        List<Point> promising = points.stream()
                .filter(point -> point.change().signum() != 0 && !point.change().abs().isGreaterThan(reach))
                .filter(point -> point.cost().compareTo(cost) < 0).sorted(Point.ORDER).limit(TIGHTENED).toList();
        promising.forEach(point -> point.tighten(building, progress));
        return promising.stream().sorted(Point.ORDER).toList();
    }

    DimensionProfile shown(Progress progress) {
        points.stream().filter(point -> point.change().signum() == 0).forEach(point -> point.lay(building, progress));
        Length best = points.stream().filter(point -> point.layout().isPresent()).min(Point.ORDER).map(Point::change)
                .orElse(Length.ZERO);
        return new DimensionProfile(adjustable, planned, points.stream().map(Point::shown).toList(), best);
    }
}
