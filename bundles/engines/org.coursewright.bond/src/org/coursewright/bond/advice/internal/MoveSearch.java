package org.coursewright.bond.advice.internal;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.coursewright.bond.WallFace;
import org.coursewright.bond.advice.DimensionProfile;
import org.coursewright.bond.advice.WallMove;
import org.coursewright.bond.internal.refit.HandedBuilding;
import org.coursewright.bond.internal.refit.RefitWall;
import org.coursewright.measure.Length;
import org.coursewright.measure.Progress;

/**
 * Looks for walls that spare cuts when they move sideways: the wall that spares most, then the next that meets none of the
 * walls that meet those before.
 */
final class MoveSearch {

    /** So many sets of moved walls are looked into. */
    private static final int MOST_SETS = 3;
    /** Places of each wall for which walls are laid to try them out. */
    private static final int TRIES = 4;

    private final List<MoveProfile> profiles = new ArrayList<>();
    private final Length budget;

    MoveSearch(HandedBuilding building, List<WallMove> moves, Length budget, Progress progress) {
        this.budget = budget;
        Map<String, RefitWall> planned = moves.isEmpty() ? Map.of() : planned(building);
        moves.forEach(move -> profiles.add(new MoveProfile(move, planned, progress)));
        profiles.forEach(profile -> profile.tryOut(building, TRIES, progress));
    }

    private static Map<String, RefitWall> planned(HandedBuilding building) {
        Map<String, RefitWall> planned = new HashMap<>();
        List<WallFace> walls = building.request().walls();
        for (int wall = 0; wall < walls.size(); wall++) {
            planned.put(walls.get(wall).mark(),
                    building.refit(building.runs(walls.get(wall)), building.result().walls().get(wall)));
        }
        return planned;
    }

    List<DimensionProfile> profiles() {
        return profiles.stream().map(MoveProfile::shown).toList();
    }

    /** Sets of moved walls that may be worth it: the best one, it and the next, and as many as there are. */
    List<MovedWalls> sets() {
        List<MovedWalls> sets = new ArrayList<>();
        Set<String> met = new HashSet<>();
        MovedWalls moved = MovedWalls.NONE;
        for (Optional<MoveProfile> next = next(met, moved); next.isPresent(); next = next(met, moved)) {
            moved = moved.and(next.get().best(budget.minus(moved.movement())).orElseThrow());
            met.addAll(next.get().walls());
            if (sets.size() == MOST_SETS) {
                sets.remove(MOST_SETS - 1);
            }
            sets.add(moved);
        }
        return sets;
    }

    private Optional<MoveProfile> next(Set<String> met, MovedWalls moved) {
        Length reach = budget.minus(moved.movement());
        return profiles.stream().filter(profile -> Collections.disjoint(profile.walls(), met))
                .filter(profile -> profile.best(reach).isPresent())
                .min(Comparator.comparing(profile -> profile.spared(reach)));
    }
}
