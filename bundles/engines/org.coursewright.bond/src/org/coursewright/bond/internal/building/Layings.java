package org.coursewright.bond.internal.building;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;
import org.coursewright.bond.internal.handing.HandedWall;
import org.coursewright.bond.internal.handing.Handing;
import org.coursewright.bond.internal.laying.WallLaying;
import org.coursewright.bond.internal.proof.CutProof;
import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.Pattern;
import org.coursewright.bond.internal.run.RunShape;
import org.coursewright.measure.Progress;

/** Lays walls and remembers how, so that equal walls are laid once. Walls may be laid side by side. */
public final class Layings {

    /** Edits that are undone come back to what was laid a few answers before. */
    private static final int SOLVES_KEPT = 6;

    /** What is known of a wall so handed; locked while it is being found out. */
    private static final class Known {
        private Optional<WallLayout> layout = Optional.empty();
        private Optional<WallLayout> better = Optional.empty();
        /** What was tried by shape of run, if it may be laid better. */
        private Optional<Map<RunShape, List<Pattern>>> open = Optional.empty();
        private Optional<CutProof> proof = Optional.empty();
        private Map<RunShape, List<Pattern>> patterns = Map.of();
        private int lastSolve;
    }

    private record LastLaid(Masonry masonry, Map<RunShape, List<Pattern>> patterns) {
    }

    private final Map<HandedWall, Known> known = new ConcurrentHashMap<>();
    /** By mark of the wall, what its runs were last laid with. */
    private final Map<String, LastLaid> last = new ConcurrentHashMap<>();
    private final RunsAlone runs = new RunsAlone();
    /** What others know; it is shared with them once it is asked for. */
    private Map<HandedWall, Known> lent = Map.of();
    private int solves;

    /** To be called before each full answer: forgets what the last few did not use. */
    void forgetOld() {
        solves++;
        known.values().removeIf(each -> each.lastSolve < solves - SOLVES_KEPT);
    }

    /** New ones that may take over what these know; what is laid with them is not remembered here. */
    Layings lent() {
        Layings borrowing = new Layings();
        borrowing.lent = Map.copyOf(known);
        return borrowing;
    }

    /** Takes over nothing more from others, so that what comes next does not depend on what they were asked before. */
    public void borrowNoMore() {
        lent = Map.of();
    }

    /** How many walls are remembered, each for one handing. */
    int size() {
        return known.size();
    }

    /** The wall as it was laid before, or laid soon, which is not remembered; runs may stay as they were last laid. */
    public WallLayout laySoon(WallFace wall, Handing handing, Progress progress) {
        Known found = known(wall, handing);
        return found.better.or(() -> found.layout)
                .orElseGet(() -> new WallLaying(wall, handing).laySoon(lastPatterns(wall), progress))
                .under(wall.mark());
    }

    private Map<RunShape, List<Pattern>> lastPatterns(WallFace wall) {
        LastLaid before = last.get(wall.mark());
        return before == null || !before.masonry().equals(Masonry.of(wall.stock(), wall.rule()))
                ? Map.of()
                : before.patterns();
    }

    /** What is known of runs. */
    RunsAlone runs() {
        return runs;
    }

    WallLayout lay(WallFace wall, Handing handing, Progress progress) {
        Known found = known(wall, handing);
        synchronized (found) {
            if (found.layout.isEmpty()) {
                lay(found, begun(found, wall, handing, progress));
            }
            last.put(wall.mark(), new LastLaid(Masonry.of(wall.stock(), wall.rule()), found.patterns));
            return found.layout.get().under(wall.mark());
        }
    }

    private static WallLaying begun(Known known, WallFace wall, Handing handing, Progress progress) {
        WallLaying laying = new WallLaying(wall, handing);
        laying.begin(() -> prove(known, laying, progress), progress);
        return laying;
    }

    private static void lay(Known known, WallLaying begun) {
        known.layout = Optional.of(begun.lay());
        known.patterns = begun.patterns();
        known.open = begun.mayBeBetter() ? Optional.of(begun.tried()) : Optional.empty();
    }

    /** The wall laid better if that has been done before, else laid. */
    public WallLayout layAsKnown(WallFace wall, Handing handing, Progress progress) {
        Known found = known(wall, handing);
        synchronized (found) {
            return found.better.map(better -> better.under(wall.mark())).orElseGet(() -> lay(wall, handing, progress));
        }
    }

    /**
     * The wall laid better where that has not been proven to be impossible; takes longer.
     */
    public WallLayout layBetter(WallFace wall, Handing handing, Progress progress) {
        Known found = known(wall, handing);
        synchronized (found) {
            if (found.better.isEmpty()) {
                found.better = Optional.of(better(found, wall, handing, progress));
            }
            last.put(wall.mark(), new LastLaid(Masonry.of(wall.stock(), wall.rule()), found.patterns));
            return found.better.get().under(wall.mark());
        }
    }

    /** What was tried is tried again together: to keep all that is known of a wall would take much memory. */
    private static WallLayout better(Known known, WallFace wall, Handing handing, Progress progress) {
        if (known.layout.isEmpty()) {
            lay(known, begun(known, wall, handing, progress));
        }
        if (known.open.isEmpty()) {
            return known.layout.get();
        }
        WallLaying laying = new WallLaying(wall, handing);
        WallLayout better = laying.layBetter(known.open.get(), progress);
        known.patterns = laying.patterns();
        known.open = Optional.empty();
        return better;
    }

    /** Cuts of every layout of the wall, so handed, that has no avoidable short lap; proven. */
    int leastCuts(WallFace wall, Handing handing, Progress progress) {
        Known found = known(wall, handing);
        synchronized (found) {
            if (found.proof.isEmpty() && found.layout.isEmpty()) {
                layOrProve(found, new WallLaying(wall, handing), progress);
            }
            return found.proof.map(CutProof::cuts).orElseGet(() -> found.layout.get().cutPieces());
        }
    }

    /** What a first look shows to be laid as well as it can be is laid at once: it needs no proof. */
    private static void layOrProve(Known known, WallLaying laying, Progress progress) {
        if (laying.begin(() -> prove(known, laying, progress), progress)) {
            lay(known, laying);
        } else {
            prove(known, laying, progress);
        }
    }

    private static CutProof prove(Known known, WallLaying laying, Progress progress) {
        CutProof proof = known.proof.orElseGet(() -> laying.prove(progress));
        known.proof = Optional.of(proof);
        return proof;
    }

    private Known known(WallFace wall, Handing handing) {
        Known found = known.computeIfAbsent(HandedWall.of(wall, handing),
                key -> Optional.ofNullable(lent.get(key)).orElseGet(Known::new));
        found.lastSolve = Math.max(found.lastSolve, solves);
        return found;
    }
}
