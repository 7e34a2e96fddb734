package org.coursewright.core.derive;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
    private final List<Node> line;
    private final Set<ModelRead<?>> reads;
    private final List<Listener> listeners = new ArrayList<>();
    private Map<ModelRead<?>, NodeState<?>> heldAgainst = Map.of();
    private List<NodeState<?>> computedFrom = List.of();
    private NodeState<?> state = new NodeState.Stale<>(Optional.empty());
    private boolean settled;

    /**
     * @param declared the result
     * @param inputs nodes of the results that it is computed from
     */
    Node(Derived<?> declared, List<Node> inputs) {
        this.declared = declared;
        Set<Node> ordered = new LinkedHashSet<>();
        inputs.forEach(each -> ordered.addAll(each.line));
        ordered.add(this);
        this.line = List.copyOf(ordered);
        Set<ModelRead<?>> needed = new HashSet<>();
        inputs.forEach(each -> needed.addAll(each.reads));
        declared.inputs().stream().filter(ModelRead.class::isInstance).forEach(each -> needed.add((ModelRead<?>) each));
        this.reads = Set.copyOf(needed);
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

    /** @return all that it is computed from, directly or not, inputs before what needs them, and itself last */
    List<Node> line() {
        return line;
    }

    /** @return what it needs of the project, directly or not */
    Set<ModelRead<?>> reads() {
        return reads;
    }

    /** Makes it stale if the project is no longer what it was when this was last called. */
    void holdAgainst(Map<ModelRead<?>, NodeState<?>> project) {
        Map<ModelRead<?>, NodeState<?>> now = new HashMap<>(project);
        now.keySet().retainAll(reads);
        if (!now.equals(heldAgainst)) {
            heldAgainst = now;
            settled = false;
        }
    }

    /** @return whether it is wanted for the project of which this was read */
    boolean isHeldAgainst(Map<ModelRead<?>, NodeState<?>> project) {
        return project.entrySet().containsAll(heldAgainst.entrySet());
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

    boolean isWanted() {
        return !listeners.isEmpty();
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
