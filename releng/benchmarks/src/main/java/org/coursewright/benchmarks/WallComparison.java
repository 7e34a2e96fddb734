package org.coursewright.benchmarks;

import java.util.Optional;

import org.coursewright.benchmarks.oracle.Handing;
import org.coursewright.benchmarks.oracle.ModelAnswer;
import org.coursewright.benchmarks.oracle.Score;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;

/**
 * One wall laid by the engine and by a reference solver, its corners handed alike.
 *
 * @param wall the wall
 * @param handing how its corners were handed
 * @param engine what the engine laid
 * @param score its score, recomputed
 * @param reference what the reference solver found
 */
record WallComparison(WallFace wall, Handing handing, WallLayout engine, Score score, ModelAnswer reference) {

    static WallComparison of(WallFace wall, Handing handing, WallLayout engine, ModelAnswer reference) {
        Score score = Score.of(wall, handing, engine);
        return new WallComparison(wall, handing, engine, score, reference);
    }

    /** Less than zero if the engine's layout is better than the reference solver's, zero if they are equal. */
    int order() {
        return reference.score().map(score::compareTo).orElse(-1);
    }

    /** Whether the engine proves its layout, no worse than the reference solver's, and that solver proves none. */
    boolean isSettledFirst() {
        return engine.optimal() && !reference.proven() && order() <= 0;
    }

    /** @return what the engine claims and the reference solver refutes, a sentence, or empty */
    Optional<String> refutation() {
        if (reference.score().isEmpty()) {
            return Optional.empty();
        }
        Score found = reference.score().get();
        if (engine.optimal() && found.compareTo(score) < 0) {
            return Optional.of("%s is called optimal with %s, but %s exists.".formatted(wall.mark(), score, found));
        }
        if (found.unfillable() == score.unfillable() && found.lapViolations() <= score.lapViolations()
                && found.cuts() < engine.lowerBound()) {
            return Optional.of("%s is said to need %d cuts, but %s exists.".formatted(wall.mark(),
                    engine.lowerBound(), found));
        }
        if (reference.proven() && score.compareTo(found) < 0) {
            return Optional.of("%s is called proven with %s by the reference solver, but the engine laid %s."
                    .formatted(wall.mark(), found, score));
        }
        return Optional.empty();
    }
}
