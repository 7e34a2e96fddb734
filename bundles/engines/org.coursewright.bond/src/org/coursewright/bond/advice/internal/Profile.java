package org.coursewright.bond.advice.internal;

import java.util.ArrayList;
import java.util.Comparator;
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

    private final HandedBuilding building;
    private final Adjustable adjustable;
    private final Terms terms;
    private final Length planned;
    private final List<Point> points = new ArrayList<>();

    Profile(HandedBuilding building, WallFace wall, Adjustable adjustable, Terms terms) {
        this.building = building;
        this.adjustable = adjustable;
        this.terms = terms;
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
     * The values for which the wall may come to less than {@code cost}, the most promising first. Where time is short,
     * only those for which its runs alone need less than as planned.
     *
     * @param reach how far the dimension may change
     * @param most how many values
     */
    List<Point> promising(LayingCost cost, Length reach, int most, Progress progress) {
        LayingCost limit = terms.isHurried()
                ? points.stream().filter(Point::isPlanned).map(Point::cost).min(Comparator.naturalOrder()).orElse(cost)
                : cost;
        List<Point> promising = points.stream()
                .filter(point -> !point.isPlanned() && !point.change().abs().isGreaterThan(reach))
                .filter(point -> point.cost().compareTo(limit) < 0).sorted(Point.ORDER).limit(most).toList();
        promising.forEach(point -> point.tighten(building, progress));
        return promising.stream().filter(point -> point.cost().compareTo(cost) < 0).sorted(Point.ORDER).toList();
    }

    /**
     * Lays the wall for promising values, at most so many, while one may come to less than those laid before.
     *
     * @return those laid
     */
    List<Point> lay(List<Point> promising, int most, Progress progress) {
        List<Point> laid = new ArrayList<>();
        for (Point point : promising) {
            progress.checkCancelled();
            if (laid.size() < most && laid.stream().allMatch(other -> point.cost().compareTo(other.cost()) < 0)) {
                point.lay(building, progress);
                laid.add(point);
            }
        }
        return laid;
    }

    DimensionProfile shown(Progress progress) {
        points.stream().filter(Point::isPlanned).forEach(point -> point.lay(building, progress));
        Length best = points.stream().filter(point -> point.layout().isPresent()).min(Point.ORDER).map(Point::change)
                .orElse(Length.ZERO);
        return new DimensionProfile(adjustable, planned, points.stream().map(Point::shown).toList(), best);
    }
}
