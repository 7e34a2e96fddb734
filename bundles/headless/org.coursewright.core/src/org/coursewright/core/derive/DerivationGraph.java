package org.coursewright.core.derive;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.Collectors;

import org.coursewright.measure.Progress;
import org.coursewright.model.project.Project;

/**
 * The results that follow from one project, each computed at most once for the same inputs.
 *
 * <p>Headless callers pull a result with {@link #get}. In a workbench, whoever shows a result listens to it: after each
 * edit the stale ones are computed again in the background, once the edits pause, and a run that is overtaken by an edit,
 * or that nobody waits for any more, is cancelled without a trace. The project itself is read on the editing thread only,
 * each part of it once after an edit, and only if a result needs it that is listened to or asked for; what is computed,
 * and told, does not depend on the number of threads.
 *
 * <p>Thread rule: all methods are called on the editing thread of the project.
 */
public final class DerivationGraph {

    private static final Duration PAUSE = Duration.ofMillis(100);

    private final ProjectReads reads;
    private final Background background;
    private final Nodes nodes = new Nodes();

    /** What the results need that somebody listens to. */
    private Map<ModelRead<?>, NodeState<?>> wantedReads = Map.of();

    /**
     * A graph that computes in the background with all processors but one.
     *
     * @param project that results follow from
     */
    public DerivationGraph(Project project) {
        this(project, Math.max(1, Runtime.getRuntime().availableProcessors() - 1), PAUSE);
    }

    /**
     * @param project that results follow from
     * @param threads how many results may be computed at the same time in the background, at least 1
     * @param pause how long edits must pause before that begins, not negative
     */
    public DerivationGraph(Project project, int threads, Duration pause) {
        this.reads = new ProjectReads(project);
        this.background = new Background(threads, pause);
    }

    /**
     * A result of a project that nobody edits meanwhile, such as one that a command has read.
     *
     * @param project that the result follows from
     * @param result what is wanted
     * @param <T> its type
     * @return the result
     * @throws DerivationException if there is none
     */
    public static <T> T once(Project project, Derived<T> result) {
        return once(project, result, Progress.NONE);
    }

    /**
     * As {@link #once(Project, Derived)}, with progress.
     *
     * @param project that the result follows from
     * @param result what is wanted
     * @param progress told how far the computing is, and asked whether it is still wanted
     * @param <T> its type
     * @return the result
     * @throws DerivationException if there is none
     * @throws CancellationException if it is no longer wanted
     */
    public static <T> T once(Project project, Derived<T> result, Progress progress) {
        DerivationGraph graph = new DerivationGraph(project);
        try {
            return graph.get(result, progress);
        } finally {
            graph.close();
        }
    }

    /**
     * A result for the project as it is, computed now if need be.
     *
     * @param result what is wanted
     * @param <T> its type
     * @return the result
     * @throws DerivationException if there is none
     */
    public <T> T get(Derived<T> result) {
        return get(result, Progress.NONE);
    }

    /**
     * As {@link #get(Derived)}, with progress.
     *
     * @param result what is wanted
     * @param progress told how far the computing is, and asked whether it is still wanted
     * @param <T> its type
     * @return the result
     * @throws DerivationException if there is none
     * @throws CancellationException if it is no longer wanted
     */
    public <T> T get(Derived<T> result, Progress progress) {
        modelChanged();
        Node node = heldAgainstProject(result);
        // of those that are computed one after the other, only the one that was asked for tells how far it is
        Progress silent = Progress.until(progress::isCancelled);
        for (Node each : node.line()) {
            bringUpToDate(each, each == node ? progress : silent);
        }
        NodeState<T> state = state(result);
        return state.value().orElseThrow(
                () -> new DerivationException(result.name(), ((NodeState.Failed<T>) state).reason()));
    }

    private void bringUpToDate(Node node, Progress progress) {
        List<NodeState<?>> inputs = new ArrayList<>();
        synchronized (this) {
            Map<ModelRead<?>, NodeState<?>> project = reads.of(node.reads());
            for (Source<?> input : node.declared().inputs()) {
                inputs.add(input instanceof Derived<?> derived ? nodes.of(derived).state() : project.get(input));
            }
        }
        settle(node, inputs, progress, () -> true);
    }

    private NodeState<?> settle(Node node, List<NodeState<?>> inputs, Progress progress, BooleanSupplier stillWanted) {
        Optional<NodeState<?>> known;
        synchronized (this) {
            known = node.known(inputs);
        }
        NodeState<?> state = known.isPresent() ? known.get() : node.compute(inputs, progress);
        synchronized (this) {
            if (!stillWanted.getAsBoolean()) {
                throw new CancellationException("Overtaken by an edit.");
            }
            node.settle(inputs, state);
        }
        return state;
    }

    /**
     * How far a result is, without computing anything.
     *
     * @param result which
     * @param <T> its type
     * @return its state; stale if it was never asked for
     */
    public synchronized <T> NodeState<T> state(Derived<T> result) {
        return result.typed(heldAgainstProject(result).state());
    }

    /** @return the node of a result, which is stale if the project is no longer what it was computed from */
    private synchronized Node heldAgainstProject(Derived<?> result) {
        Node node = nodes.of(result);
        Map<ModelRead<?>, NodeState<?>> project = reads.of(node.reads());
        node.line().forEach(each -> each.holdAgainst(project));
        return node;
    }

    /**
     * Asks to be told about a result: soon for the project as it is, and again each time it settles after an edit. Each
     * time it settles there is one call.
     *
     * @param result which
     * @param on runs the calls, such as the queue of the display's thread; must return at once and not wait for the call
     * @param listener told the new state, fresh or failed; must not throw
     * @param <T> type of the result
     * @return what ends the listening
     */
    public synchronized <T> Listening listen(Derived<T> result, Executor on,
            Consumer<? super NodeState<T>> listener) {
        Node node = nodes.of(result);
        Node.Listener added = new Node.Listener(on, state -> listener.accept(result.typed(state)));
        node.add(added);
        modelChanged();
        if (node.isSettled()) {
            added.tell(node.state());
        }
        return () -> remove(node, added);
    }

    private synchronized void remove(Node node, Node.Listener listener) {
        node.remove(listener);
        if (nodes.staleAndWanted().isEmpty()) {
            background.cancel();
        }
    }

    /** Being told about a result, until it is ended. */
    @FunctionalInterface
    public interface Listening {
        /** Asks not to be told any more. */
        void end();
    }

    /**
     * Takes note that the project may have changed; a session calls it after each edit. Of the project only that is read
     * which results need that somebody listens to, and only if it has changed.
     */
    public synchronized void modelChanged() {
        boolean changed = readWhatIsWanted();
        List<Node> stale = nodes.staleAndWanted();
        if (background.isEnded() || background.isBegun(stale, changed)) {
            return;
        }
        background.cancel();
        if (!stale.isEmpty()) {
            background.soon(this::startRun);
        }
    }

    /** @return whether something has changed that was wanted before */
    private boolean readWhatIsWanted() {
        Map<ModelRead<?>, NodeState<?>> before = wantedReads;
        List<Node> wanted = nodes.wanted();
        wantedReads = reads.of(wanted.stream().flatMap(node -> node.reads().stream()).collect(Collectors.toSet()));
        wanted.stream().flatMap(node -> node.line().stream()).distinct().forEach(node -> node.holdAgainst(wantedReads));
        return !wantedReads.entrySet().containsAll(before.entrySet());
    }

    private synchronized void startRun() {
        if (Thread.currentThread().isInterrupted() || background.isEnded()) {
            return;
        }
        background.begin(threads -> new BackgroundRun(wantedReads, threads, this::settleInBackground))
                .start(nodes.staleAndWanted().stream().<Derived<?>>map(Node::declared).toList());
    }

    private NodeState<?> settleInBackground(Derived<?> result, List<NodeState<?>> inputs, BackgroundRun by) {
        Node node = node(result);
        return settle(node, inputs, by, () -> !by.isCancelled() && node.isHeldAgainst(by.project()));
    }

    private synchronized Node node(Derived<?> result) {
        return nodes.of(result);
    }

    /** Ends all computing in the background; nobody is told anything any more. */
    public synchronized void close() {
        background.end();
        reads.end();
    }
}
