package org.coursewright.layout.ui.editor;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;

import org.coursewright.core.bond.LayoutOutcome;
import org.coursewright.core.bond.LayoutResults;
import org.coursewright.core.derive.DerivationGraph;
import org.coursewright.core.derive.Derived;
import org.coursewright.core.derive.NodeState;
import org.coursewright.layout.ui.face.FaceDrawing;
import org.coursewright.model.building.Wall;

/**
 * How one wall is laid: the last layout there was, and whether it is of the project as it is now. After an edit there is a
 * first answer soon, and a better one later.
 */
final class WallLaying {

    private final Wall wall;
    private final DerivationGraph results;
    private final Runnable changed;
    private final List<DerivationGraph.Listening> listening;
    private Optional<LayoutOutcome> outcome = Optional.empty();
    private Optional<FaceDrawing> drawing = Optional.empty();
    private Optional<String> failure = Optional.empty();
    private boolean ended;

    /**
     * @param wall of the project
     * @param results of the project
     * @param display runs what is told in the user interface thread
     * @param changed run there each time the building has been laid
     */
    WallLaying(Wall wall, DerivationGraph results, Executor display, Runnable changed) {
        this.wall = wall;
        this.results = results;
        this.changed = changed;
        this.listening = List.of(results.listen(LayoutResults.FIRST_LAYOUT, display, this::laidSoon),
                results.listen(LayoutResults.LAYOUT, display, this::laid));
    }

    /** A first answer that comes after the answer is of no use. */
    private void laidSoon(NodeState<LayoutOutcome> state) {
        if (isStale(LayoutResults.LAYOUT)) {
            laid(state);
        }
    }

    private void laid(NodeState<LayoutOutcome> state) {
        if (ended) {
            return;
        }
        failure = state instanceof NodeState.Failed<LayoutOutcome> failed
                ? Optional.of(failed.reason())
                : Optional.empty();
        state.value().ifPresent(laid -> {
            outcome = Optional.of(laid);
            drawing = FaceDrawing.of(wall, laid);
        });
        changed.run();
    }

    /** How the building was last laid. */
    Optional<LayoutOutcome> outcome() {
        return outcome;
    }

    /** The last layout of the wall, empty if there was none or if it cannot be laid any more. */
    Optional<FaceDrawing> drawing() {
        return drawing;
    }

    /** Why the building cannot be laid. */
    Optional<String> failure() {
        return failure;
    }

    /** Whether the wall is not laid because it is not sound. */
    boolean isLeftOut() {
        return outcome.isPresent() && drawing.isEmpty();
    }

    /** Whether the project has changed since, or what is shown is a first answer only. */
    boolean isStale() {
        return isStale(LayoutResults.LAYOUT);
    }

    /** Whether not even a first answer is of the project as it is. */
    boolean isOutdated() {
        return isStale() && isStale(LayoutResults.FIRST_LAYOUT);
    }

    private boolean isStale(Derived<LayoutOutcome> result) {
        return results.state(result) instanceof NodeState.Stale;
    }

    /** Ends the listening; what is already on its way is ignored. */
    void end() {
        ended = true;
        listening.forEach(DerivationGraph.Listening::end);
    }
}
