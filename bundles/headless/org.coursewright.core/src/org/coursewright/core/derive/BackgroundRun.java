package org.coursewright.core.derive;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.PriorityBlockingQueue;

import org.coursewright.measure.Progress;

/**
 * Brings results up to date on other threads, from one reading of the project, independent ones at the same time. Of those
 * that are ready and wait for a thread, the one that was asked for first comes first.
 */
final class BackgroundRun implements Progress {

    /** How one result is brought up to date. */
    @FunctionalInterface
    interface Step {
        NodeState<?> settle(Derived<?> result, List<NodeState<?>> inputs, BackgroundRun run);
    }

    private final Map<ModelRead<?>, NodeState<?>> project;
    private final Executor executor;
    private final Step step;
    private final Map<Derived<?>, CompletableFuture<NodeState<?>>> futures = new HashMap<>();
    private final Queue<Ready> ready = new PriorityBlockingQueue<>();
    private volatile boolean cancelled;

    /** What can be begun, with its place among all that are asked for. */
    private record Ready(int rank, Runnable task) implements Comparable<Ready> {

        @Override
        public int compareTo(Ready other) {
            return Integer.compare(rank, other.rank);
        }
    }

    BackgroundRun(Map<ModelRead<?>, NodeState<?>> project, Executor executor, Step step) {
        this.project = project;
        this.executor = executor;
        this.step = step;
    }

    void start(List<Derived<?>> results) {
        results.forEach(this::future);
    }

    /** @return what was read of the project */
    Map<ModelRead<?>, NodeState<?>> project() {
        return project;
    }

    /** @return whether it brings about all these results, each from what the project still is */
    boolean isGoodFor(List<Node> wanted) {
        return wanted.stream().allMatch(node -> isOnItsWay(node.declared()) && node.isHeldAgainst(project));
    }

    private boolean isOnItsWay(Derived<?> result) {
        return futures.containsKey(result) && !futures.get(result).isDone();
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
        return CompletableFuture.completedFuture(project.get(source));
    }

    private CompletableFuture<NodeState<?>> begin(Derived<?> derived) {
        List<CompletableFuture<NodeState<?>>> inputs = derived.inputs().stream().map(this::future).toList();
        int rank = futures.size();
        CompletableFuture<NodeState<?>> begun = CompletableFuture
                .allOf(inputs.toArray(CompletableFuture<?>[]::new))
                .thenApplyAsync(done -> settle(derived, inputs), task -> await(new Ready(rank, task)));
        futures.put(derived, begun);
        return begun;
    }

    /** As many tasks are handed on as there are ready ones; which of them a thread takes is found out when it is free. */
    private void await(Ready task) {
        ready.add(task);
        executor.execute(() -> ready.remove().task().run());
    }

    private NodeState<?> settle(Derived<?> derived, List<CompletableFuture<NodeState<?>>> inputs) {
        checkCancelled();
        List<NodeState<?>> states = inputs.stream().<NodeState<?>>map(CompletableFuture::join).toList();
        return step.settle(derived, states, this);
    }
}
