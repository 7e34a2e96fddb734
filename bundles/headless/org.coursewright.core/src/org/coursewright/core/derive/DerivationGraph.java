package org.coursewright.core.derive;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

import org.coursewright.measure.Progress;
import org.coursewright.model.project.Project;

/**
 * The results that follow from one project, each computed at most once for the same inputs.
 *
 * <p>Headless callers pull a result with {@link #get}. In a workbench, whoever shows a result listens to it: after each
 * edit the stale ones are computed again in the background, once the edits pause, and a run that is overtaken by an edit
 * is cancelled without a trace. The project itself is read on the editing thread only; what is computed, and told, does
 * not depend on the number of threads.
 *
 * <p>Thread rule: all methods are called on the editing thread of the project.
 */
public final class DerivationGraph {

    private static final Duration PAUSE = Duration.ofMillis(100);

    private final Project project;
    private final long pauseMillis;
    private final ScheduledThreadPoolExecutor executor;
    private final Map<Derived<?>, Node> nodes = new LinkedHashMap<>();

    private Snapshot snapshot = Snapshot.EMPTY;
    private Optional<BackgroundRun> run = Optional.empty();
    private Optional<ScheduledFuture<?>> waiting = Optional.empty();

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
        this.project = project;
        this.pauseMillis = pause.toMillis();
        this.executor = new ScheduledThreadPoolExecutor(threads, task -> {
            Thread thread = new Thread(task, "derived results");
            thread.setDaemon(true);
            return thread;
        });
        this.executor.setRemoveOnCancelPolicy(true);
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
        Node node = node(result);
        modelChanged();
        NodeState<T> state = result.typed(pull(node, progress));
        return state.value().orElseThrow(
                () -> new DerivationException(result.name(), ((NodeState.Failed<T>) state).reason()));
    }

    private NodeState<?> pull(Node node, Progress progress) {
        List<NodeState<?>> inputs = new ArrayList<>();
        for (Source<?> input : node.declared().inputs()) {
            inputs.add(input instanceof Derived<?> derived
                    ? pull(node(derived), new OnlyCancelling(progress))
                    : snapshot.reads().get(input));
        }
        return settle(node, inputs, progress, () -> true);
    }

    /** Of several results that are computed one after the other, only the last tells how far it is. */
    private record OnlyCancelling(Progress progress) implements Progress {
        @Override
        public void done(double fraction) {
            // the result that was asked for tells
        }

        @Override
        public boolean isCancelled() {
            return progress.isCancelled();
        }
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
        return result.typed(node(result).state());
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
        Node node = node(result);
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
    }

    /** Being told about a result, until it is ended. */
    @FunctionalInterface
    public interface Listening {
        /** Asks not to be told any more. */
        void end();
    }

    /** Takes note that the project may have changed; a session calls it after each edit. */
    public synchronized void modelChanged() {
        Snapshot before = snapshot;
        snapshot = Snapshot.of(project, nodes.keySet());
        nodes.values().stream().filter(node -> snapshot.differsFor(node.declared(), before)).forEach(Node::markStale);
        List<Derived<?>> wanted = staleAndWanted();
        if (executor.isShutdown() || run.isPresent() && run.get().isGoodFor(wanted, snapshot)) {
            return;
        }
        cancelRun();
        if (!wanted.isEmpty()) {
            waiting = Optional.of(executor.schedule(this::startRun, pauseMillis, TimeUnit.MILLISECONDS));
        }
    }

    private void cancelRun() {
        waiting.ifPresent(each -> each.cancel(false));
        waiting = Optional.empty();
        run.ifPresent(BackgroundRun::cancel);
        run = Optional.empty();
    }

    private synchronized void startRun() {
        if (Thread.currentThread().isInterrupted() || executor.isShutdown()) {
            return;
        }
        BackgroundRun started = new BackgroundRun(snapshot, executor, this::settleInBackground);
        run = Optional.of(started);
        started.start(staleAndWanted());
    }

    private NodeState<?> settleInBackground(Derived<?> result, List<NodeState<?>> inputs, BackgroundRun by) {
        return settle(node(result), inputs, by, () -> !by.isCancelled());
    }

    private List<Derived<?>> staleAndWanted() {
        List<Derived<?>> wanted = new ArrayList<>();
        nodes.values().stream().filter(Node::isStaleAndWanted).forEach(node -> wanted.add(node.declared()));
        wanted.sort(Comparator.comparing(result -> !result.isAhead()));
        return wanted;
    }

    /** @return the node of a result, made after those of its inputs if there is none yet */
    private synchronized Node node(Derived<?> result) {
        Node known = nodes.get(result);
        if (known != null) {
            return known;
        }
        for (Source<?> input : result.inputs()) {
            if (input instanceof Derived<?> derived) {
                node(derived);
            }
        }
        Node made = new Node(result);
        nodes.put(result, made);
        return made;
    }

    /** Ends all computing in the background; nobody is told anything any more. */
    public synchronized void close() {
        cancelRun();
        executor.shutdownNow();
    }
}
