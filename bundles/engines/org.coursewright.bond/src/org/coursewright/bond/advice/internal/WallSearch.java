package org.coursewright.bond.advice.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.coursewright.bond.WallFace;
import org.coursewright.bond.advice.Adjustable;
import org.coursewright.bond.advice.Change;
import org.coursewright.bond.advice.DimensionProfile;
import org.coursewright.bond.internal.HandedBuilding;
import org.coursewright.measure.Progress;

/**
 * Looks for changes of one wall that spare cuts: one dimension at a time, and then, from the best found, another, until
 * none helps.
 */
final class WallSearch {

    /** Values that get a better bound for one that is laid. */
    private static final int TIGHTENED = 3;

    private final HandedBuilding building;
    private final List<Adjustable> adjustables;
    private final Terms terms;
    private final List<WallOption> options = new ArrayList<>();
    private final List<DimensionProfile> profiles = new ArrayList<>();

    WallSearch(HandedBuilding building, List<Adjustable> adjustables, Terms terms) {
        this.building = building;
        this.adjustables = adjustables;
        this.terms = terms;
    }

    /** Finds options of the wall, the first of them the wall as planned. */
    void search(WallFace wall, Progress progress) {
        WallOption planned = new WallOption(List.of(), wall, building.lay(wall, progress));
        options.add(planned);
        for (Adjustable adjustable : adjustables) {
            Profile profile = new Profile(building, wall, adjustable, terms);
            profile.lay(promising(planned, profile, terms.tries(), progress), terms.tries(), progress)
                    .forEach(point -> offer(planned, adjustable, point));
            profiles.add(profile.shown(progress));
        }
        WallOption last = planned;
        for (WallOption best = best(); best != last; best = best()) {
            last = best;
            further(best, progress);
        }
    }

    private List<Point> promising(WallOption from, Profile profile, int tries, Progress progress) {
        return profile.promising(from.cost(), terms.budget().minus(from.movement()), TIGHTENED * tries, progress);
    }

    /** From the best option so far, lays the one change of another dimension that promises most. */
    private void further(WallOption from, Progress progress) {
        Map<Point, Adjustable> promising = new LinkedHashMap<>();
        for (Adjustable adjustable : adjustables) {
            if (from.changes().stream().noneMatch(change -> change.adjustable().equals(adjustable))) {
                Profile profile = new Profile(building, from.face(), adjustable, terms);
                promising(from, profile, 1, progress).stream().findFirst()
                        .ifPresent(point -> promising.put(point, adjustable));
            }
        }
        promising.keySet().stream().min(Point.ORDER).ifPresent(point -> {
            point.lay(building, progress);
            offer(from, promising.get(point), point);
        });
    }

    private void offer(WallOption from, Adjustable adjustable, Point point) {
        if (point.cost().compareTo(from.cost()) < 0) {
            options.add(from.and(new Change(adjustable, point.change()), point.face(), point.layout().orElseThrow()));
        }
    }

    private WallOption best() {
        return options.stream()
                .min(Comparator.comparing(WallOption::cost).thenComparing(WallOption::movement)).orElseThrow();
    }

    List<WallOption> options() {
        return options;
    }

    List<DimensionProfile> profiles() {
        return profiles;
    }
}
