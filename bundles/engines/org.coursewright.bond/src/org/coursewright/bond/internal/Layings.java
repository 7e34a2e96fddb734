package org.coursewright.bond.internal;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;
import org.coursewright.measure.Progress;

/** Lays walls and remembers how, so that equal walls are laid once. */
final class Layings {

    /** Edits that are undone come back to what was laid a few answers before. */
    private static final int SOLVES_KEPT = 6;

    /** What is known of a wall so handed. */
    private static final class Known {
        private Optional<WallLayout> layout = Optional.empty();
        private Optional<Integer> leastCuts = Optional.empty();
        private int lastSolve;
    }

    private final Map<HandedWall, Known> known = new HashMap<>();
    private final RunsAlone runs = new RunsAlone();
    private int solves;

    /** To be called before each full answer: forgets what the last few did not use. */
    void forgetOld() {
        solves++;
        known.values().removeIf(each -> each.lastSolve < solves - SOLVES_KEPT);
    }

    /** How many walls are remembered, each for one handing. */
    int size() {
        return known.size();
    }

    /** The wall as it was laid before, or laid soon, which is not remembered. */
    WallLayout laySoon(WallFace wall, Handing handing, Progress progress) {
        Known found = known(wall, handing);
        return found.layout.orElseGet(() -> new WallLaying(wall, handing).laySoon(progress)).under(wall.mark());
    }

    /** What is known of runs. */
    RunsAlone runs() {
        return runs;
    }

    WallLayout lay(WallFace wall, Handing handing, Progress progress) {
        Known found = known(wall, handing);
        if (found.layout.isEmpty()) {
            found.layout = Optional.of(new WallLaying(wall, handing).lay(progress));
        }
        return found.layout.get().under(wall.mark());
    }

    /**
     * Cuts of every layout of the wall, so handed, that has no avoidable short lap; proven. Nothing else is kept: a wall
     * has to be laid alike whether it was bounded before or not.
     */
    int leastCuts(WallFace wall, Handing handing, Progress progress) {
        Known found = known(wall, handing);
        if (found.leastCuts.isEmpty()) {
            found.leastCuts = Optional.of(new WallLaying(wall, handing).leastCuts(progress));
        }
        return found.leastCuts.get();
    }

    private Known known(WallFace wall, Handing handing) {
        Known found = known.computeIfAbsent(HandedWall.of(wall, handing), key -> new Known());
        found.lastSolve = solves;
        return found;
    }
}
