package org.coursewright.estimate.ui.part;

import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

import org.coursewright.core.derive.DerivationGraph;
import org.coursewright.core.derive.Derived;
import org.coursewright.core.derive.NodeState;

/**
 * A derived result as an editor shows it: the last one there was stays to be seen until the next is there.
 *
 * @param <T> type of the result
 */
public final class ShownResult<T> {

    private final DerivationGraph graph;
    private final Derived<T> wanted;
    private final Consumer<T> shown;
    private final Runnable changed;
    private final DerivationGraph.Listening listening;
    private Optional<T> last = Optional.empty();
    private Optional<String> failure = Optional.empty();
    private boolean ended;

    /**
     * From now on has the result computed in the background.
     *
     * @param graph of the project
     * @param wanted result
     * @param display runs what is told in the user interface thread
     * @param shown told there each new result
     * @param changed run there each time the result has settled
     */
    ShownResult(DerivationGraph graph, Derived<T> wanted, Executor display, Consumer<T> shown, Runnable changed) {
        this.graph = graph;
        this.wanted = wanted;
        this.shown = shown;
        this.changed = changed;
        this.listening = graph.listen(wanted, display, this::settled);
    }

    private void settled(NodeState<T> state) {
        if (!ended) {
            failure = state instanceof NodeState.Failed<T> failed ? Optional.of(failed.reason()) : Optional.empty();
            state.value().ifPresent(this::take);
            changed.run();
        }
    }

    private void take(T value) {
        last = Optional.of(value);
        shown.accept(value);
    }

    /** @return the last result there was */
    public Optional<T> last() {
        return last;
    }

    /** @return why there is no result for the project as it is */
    public Optional<String> failure() {
        return failure;
    }

    /** @return whether the result is being worked out */
    public boolean isStale() {
        return graph.state(wanted) instanceof NodeState.Stale;
    }

    /** Ends the listening; what is already on its way is ignored. */
    public void end() {
        ended = true;
        listening.end();
    }
}
