package org.coursewright.bond.advice.internal;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;
import org.coursewright.bond.advice.Adjustable;
import org.coursewright.bond.advice.DimensionProfile;
import org.coursewright.bond.internal.building.LayingCost;
import org.coursewright.bond.internal.refit.HandedBuilding;
import org.coursewright.bond.internal.refit.RefitWall;
import org.coursewright.measure.Progress;

/**
 * Looks for changes of one wall that spare cuts: one dimension at a time, and then, from the best found, another, until
 * none helps.
 */
final class WallSearch {

    /** Options of one dimension from which further ones are looked for where movement is limited. */
    private static final int STARTS = 4;

    /** An option and the layout it is known by, from which others are fitted. */
    private record Found(WallOption option, RefitWall fitted) {

        static final Comparator<Found> ORDER = Comparator.comparing(Found::option, WallOption.ORDER);
    }

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

    /**
     * Finds options of the wall, the first of them the wall as planned.
     *
     * @param tries how often the wall may be laid for it
     */
    void search(WallFace wall, int tries, Progress progress) {
        WallLayout layout = building.lay(wall, progress);
        Found planned = new Found(WallOption.planned(wall, layout), building.refit(building.runs(wall), layout));
        options.add(planned.option());
        Map<Adjustable, Profile> found = new LinkedHashMap<>();
        for (Adjustable adjustable : adjustables) {
            Profile profile = profile(planned, adjustable);
            profile.fitPlanned(layout, planned.fitted(), progress);
            found.put(adjustable, profile);
        }
        lay(found.values(), planned.option().cost(), tries, progress);
        found.values().forEach(profile -> profiles.add(profile.shown()));
        List<Found> better = new ArrayList<>();
        found.forEach((adjustable, profile) -> better.addAll(sparing(planned, adjustable, profile)));
        better.forEach(each -> options.add(each.option()));
        starts(better).forEach(start -> chain(start, progress));
    }

    /** The best; where movement is limited, also some that move less. */
    private List<Found> starts(List<Found> found) {
        int most = terms.isLimited() ? STARTS : 1;
        Set<WallOption> worth = new HashSet<>(options());
        return found.stream().filter(each -> worth.contains(each.option())).sorted(Found.ORDER).limit(most).toList();
    }

    /** From one option to the best that a change of another dimension makes of it, until none makes it better. */
    private void chain(Found start, Progress progress) {
        Found from = start;
        for (List<Found> last = further(from, progress); !last.isEmpty(); last = further(from, progress)) {
            last.forEach(each -> options.add(each.option()));
            from = last.stream().min(Found.ORDER).orElseThrow();
        }
    }

    /**
     * Lays the wall for the values with the least bounds; of equal ones those of the dimension laid least often first. That
     * is done soon unless laps are short as planned: then it takes more to mend them.
     */
    private void lay(Collection<Profile> dimensions, LayingCost cost, int tries, Progress progress) {
        for (int tried = 0; tried < tries; tried++) {
            Optional<Profile> next = dimensions.stream().filter(profile -> profile.promising(cost).isPresent())
                    .min(Comparator.comparing((Profile profile) -> profile.promising(cost).orElseThrow().bound())
                            .thenComparing(Profile::laid)
                            .thenComparing(profile -> profile.promising(cost).orElseThrow().distance()));
            if (next.isEmpty()) {
                return;
            }
            next.get().lay(next.get().promising(cost).orElseThrow(), building, cost.violations() == 0, progress);
        }
    }

    private Profile profile(Found from, Adjustable adjustable) {
        return new Profile(from.option().face(), from.fitted().runs(), adjustable, terms);
    }

    private List<Found> sparing(Found from, Adjustable adjustable, Profile profile) {
        return profile.sparing(from.option().cost(), terms.budget().minus(from.option().movement())).stream()
                .map(point -> new Found(from.option().and(adjustable, point), point.fitted().orElseThrow())).toList();
    }

    /** What changes of another dimension make of an option, as far as they make it better. */
    private List<Found> further(Found from, Progress progress) {
        List<Found> found = new ArrayList<>();
        for (Adjustable adjustable : adjustables) {
            if (!from.option().changes(adjustable)) {
                Profile profile = profile(from, adjustable);
                profile.fitPromising(from.fitted(), terms.isLimited(), progress);
                found.addAll(sparing(from, adjustable, profile));
            }
        }
        return found;
    }

    /** The options that are worth their movement: none that moves further for no less than another. */
    List<WallOption> options() {
        List<WallOption> worth = new ArrayList<>();
        options.stream().sorted(Comparator.comparing(WallOption::movement).thenComparing(WallOption::cost))
                .filter(option -> worth.stream().allMatch(less -> option.cost().compareTo(less.cost()) < 0))
                .forEach(worth::add);
        return worth;
    }

    List<DimensionProfile> profiles() {
        return profiles;
    }
}
