package org.coursewright.layout.ui.editor;

import java.util.Optional;
import java.util.concurrent.Executor;

import org.coursewright.core.bond.LayoutOutcome;
import org.coursewright.core.check.ProjectResults;
import org.coursewright.core.derive.DerivationGraph;
import org.coursewright.core.derive.NodeState;
import org.coursewright.layout.ui.face.FaceDrawing;
import org.coursewright.model.building.Wall;

/** How one wall is laid: the last layout there was, and whether it is of the project as it is now. */
final class WallLaying {

    private final Wall wall;
    private final DerivationGraph results;
    private final Runnable changed;
    private final DerivationGraph.Listening listening;
    private Optional<FaceDrawing> drawing = Optional.empty();
    private Optional<String> failure = Optional.empty();
    private boolean leftOut;
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
        this.listening = results.listen(ProjectResults.LAYOUT, display, this::laid);
    }

    private void laid(NodeState<LayoutOutcome> state) {
        if (ended) {
            return;
        }
        failure = state instanceof NodeState.Failed<LayoutOutcome> failed
                ? Optional.of(failed.reason())
                : Optional.empty();
        state.value().ifPresent(outcome -> {
            drawing = FaceDrawing.of(wall, outcome);
            leftOut = drawing.isEmpty();
        });
        changed.run();
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
        return leftOut;
    }

    /** Whether the project has changed since. */
    boolean isStale() {
        return results.state(ProjectResults.LAYOUT) instanceof NodeState.Stale;
    }

    /** Ends the listening; what is already on its way is ignored. */
    void end() {
        ended = true;
        listening.end();
    }
}
