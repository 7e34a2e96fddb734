package org.coursewright.core.derive;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;

import org.coursewright.measure.Progress;

/** Brings results up to date on other threads, from one snapshot of the project, independent ones at the same time. */
final class BackgroundRun implements Progress {

    /** How one result is brought up to date. */
    @FunctionalInterface
    interface Step {
        NodeState<?> settle(Derived<?> result, List<NodeState<?>> inputs, BackgroundRun run);
    }

    private final Snapshot snapshot;
    private final Executor executor;
    private final Step step;
    private final Map<Derived<?>, CompletableFuture<NodeState<?>>> futures = new HashMap<>();
    private volatile boolean cancelled;

    BackgroundRun(Snapshot snapshot, Executor executor, Step step) {
        this.snapshot = snapshot;
        this.executor = executor;
        this.step = step;
    }

    void start(List<Derived<?>> results) {
        results.forEach(this::future);
    }

    /** @return whether it brings about all these results, and from what the project still is */
    boolean isGoodFor(List<Derived<?>> results, Snapshot now) {
        return futures.keySet().containsAll(results)
                && futures.keySet().stream().noneMatch(each -> now.differsFor(each, snapshot));
    }

    void cancel() {
        cancelled = true;
    }

    @Override
    public boolean isCancelled() {
        return cancelled;
    }

    @Override
    public void done(double fraction) {
        // nobody shows how far a background run is
    }

    private CompletableFuture<NodeState<?>> future(Source<?> source) {
        if (source instanceof Derived<?> derived) {
            CompletableFuture<NodeState<?>> known = futures.get(derived);
            return known != null ? known : begin(derived);
        }
        return CompletableFuture.completedFuture(snapshot.reads().get(source));
    }

    private CompletableFuture<NodeState<?>> begin(Derived<?> derived) {
        List<CompletableFuture<NodeState<?>>> inputs = derived.inputs().stream().map(this::future).toList();
        CompletableFuture<NodeState<?>> begun = CompletableFuture
                .allOf(inputs.toArray(CompletableFuture<?>[]::new))
                .thenApplyAsync(done -> settle(derived, inputs), executor);
        futures.put(derived, begun);
        return begun;
    }

    private NodeState<?> settle(Derived<?> derived, List<CompletableFuture<NodeState<?>>> inputs) {
        checkCancelled();
        List<NodeState<?>> states = inputs.stream().<NodeState<?>>map(CompletableFuture::join).toList();
        return step.settle(derived, states, this);
    }
}
