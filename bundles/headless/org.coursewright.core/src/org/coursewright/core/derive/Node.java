package org.coursewright.core.derive;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

import org.coursewright.measure.Progress;

/**
 * A declared result in a graph: what it was last computed from and what came out. Guarded by the graph's monitor, save
 * for computing, which changes nothing.
 */
final class Node {

    private final Derived<?> declared;
    private final List<Listener> listeners = new ArrayList<>();
    private List<NodeState<?>> computedFrom = List.of();
    private NodeState<?> state = new NodeState.Stale<>(Optional.empty());
    private boolean settled;

    Node(Derived<?> declared) {
        this.declared = declared;
    }

    /**
     * Who is told about the result.
     *
     * @param executor on which thread
     * @param receiver what is called
     */
    record Listener(Executor executor, Consumer<NodeState<?>> receiver) {
        void tell(NodeState<?> told) {
            executor.execute(() -> receiver.accept(told));
        }
    }

    Derived<?> declared() {
        return declared;
    }

    void add(Listener listener) {
        listeners.add(listener);
    }

    void remove(Listener listener) {
        listeners.remove(listener);
    }

    boolean isSettled() {
        return settled;
    }

    boolean isStaleAndWanted() {
        return !settled && !listeners.isEmpty();
    }

    void markStale() {
        settled = false;
    }

    NodeState<?> state() {
        return settled || state instanceof NodeState.Stale ? state : new NodeState.Stale<>(state.value());
    }

    /** @return the result that is known for these inputs */
    Optional<NodeState<?>> known(List<NodeState<?>> inputs) {
        boolean same = !(state instanceof NodeState.Stale) && computedFrom.equals(inputs);
        return same ? Optional.of(state) : Optional.empty();
    }

    /** Takes a result in, and tells it if it was awaited. */
    void settle(List<NodeState<?>> inputs, NodeState<?> result) {
        boolean awaited = !settled;
        computedFrom = List.copyOf(inputs);
        state = result;
        settled = true;
        if (awaited) {
            List.copyOf(listeners).forEach(each -> each.tell(result));
        }
    }

    /** Computes the result, or finds out why there is none. */
    NodeState<?> compute(List<NodeState<?>> inputs, Progress progress) {
        for (NodeState<?> input : inputs) {
            if (input instanceof NodeState.Failed<?> failed) {
                return failed;
            }
        }
        try {
            Object result = declared.compute(new Inputs(declared.inputs(), inputs), progress);
            progress.checkCancelled();
            return new NodeState.Fresh<>(result);
        } catch (CancellationException e) {
            throw e;
        } catch (RuntimeException | LinkageError | StackOverflowError e) {
            // whatever goes wrong in one result, also in a plug-in, is its state and no reason for others to fail
            return new NodeState.Failed<>(e.getMessage() == null ? e.toString() : e.getMessage());
        }
    }
}
