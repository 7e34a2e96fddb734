package org.coursewright.bond.advice.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

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

    private static final int LAID = 2;

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
            options.addAll(changed(planned, adjustable, profile, LAID, progress));
            profiles.add(profile.shown(progress));
        }
        WallOption last = planned;
        for (WallOption best = best(); best != last; best = best()) {
            last = best;
            for (Adjustable adjustable : adjustables) {
                if (best.changes().stream().noneMatch(change -> change.adjustable().equals(adjustable))) {
                    Profile profile = new Profile(building, best.face(), adjustable, terms);
                    options.addAll(changed(best, adjustable, profile, 1, progress));
                }
            }
        }
    }

    private List<WallOption> changed(WallOption from, Adjustable adjustable, Profile profile, int most,
            Progress progress) {
        return profile.lay(from.cost(), terms.budget().minus(from.movement()), most, progress).stream()
                .map(point -> from.and(new Change(adjustable, point.change()), point.face(),
                        point.layout().orElseThrow()))
                .filter(option -> option.cost().compareTo(from.cost()) < 0).toList();
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
