package org.coursewright.bond.internal;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;
import org.coursewright.measure.Progress;

/** Lays walls and remembers how, so that equal walls are laid once. Walls may be laid side by side. */
final class Layings {

    /** Edits that are undone come back to what was laid a few answers before. */
    private static final int SOLVES_KEPT = 6;

    /** What is known of a wall so handed; locked while it is being found out. */
    private static final class Known {
        private Optional<WallLayout> layout = Optional.empty();
        private Optional<CutProof> proof = Optional.empty();
        private int lastSolve;
    }

    private final Map<HandedWall, Known> known = new ConcurrentHashMap<>();
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
        synchronized (found) {
            if (found.layout.isEmpty()) {
                WallLaying laying = new WallLaying(wall, handing);
                found.layout = Optional.of(laying.lay(() -> prove(found, laying, progress), progress));
            }
            return found.layout.get().under(wall.mark());
        }
    }

    /** Cuts of every layout of the wall, so handed, that has no avoidable short lap; proven. */
    int leastCuts(WallFace wall, Handing handing, Progress progress) {
        Known found = known(wall, handing);
        synchronized (found) {
            return found.proof.orElseGet(() -> prove(found, new WallLaying(wall, handing), progress)).cuts();
        }
    }

    private static CutProof prove(Known known, WallLaying laying, Progress progress) {
        CutProof proof = known.proof.orElseGet(() -> laying.prove(progress));
        known.proof = Optional.of(proof);
        return proof;
    }

    private Known known(WallFace wall, Handing handing) {
        Known found = known.computeIfAbsent(HandedWall.of(wall, handing), key -> new Known());
        found.lastSolve = solves;
        return found;
    }
}
