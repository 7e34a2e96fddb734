package org.coursewright.core.derive;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;

/**
 * The threads on which results are brought up to date: at most one run at a time, begun once edits pause. Guarded by the
 * graph's monitor.
 */
final class Background {

    private final long pauseMillis;
    private final ScheduledThreadPoolExecutor executor;
    private Optional<BackgroundRun> run = Optional.empty();
    private Optional<ScheduledFuture<?>> waiting = Optional.empty();

    /**
     * @param threads how many results may be computed at the same time, at least 1
     * @param pause how long edits must pause before a run begins, not negative
     */
    Background(int threads, Duration pause) {
        this.pauseMillis = pause.toMillis();
        this.executor = new ScheduledThreadPoolExecutor(threads, task -> {
            Thread thread = new Thread(task, "derived results");
            thread.setDaemon(true);
            return thread;
        });
        this.executor.setRemoveOnCancelPolicy(true);
    }

    /**
     * @param stale results that somebody waits for
     * @param changed whether something has changed that they need
     * @return whether a run that brings them about is on its way, or waits for nothing but a pause
     */
    boolean isBegun(List<Node> stale, boolean changed) {
        return run.isPresent() ? run.get().isGoodFor(stale) : waiting.isPresent() && !changed;
    }

    /** @param begin called on another thread after the pause, unless the run is cancelled before */
    void soon(Runnable begin) {
        waiting = Optional.of(executor.schedule(begin, pauseMillis, TimeUnit.MILLISECONDS));
    }

    /**
     * @param made makes the run, given the threads for it
     * @return the run, which takes the place of the one that was waited for
     */
    BackgroundRun begin(Function<Executor, BackgroundRun> made) {
        waiting = Optional.empty();
        BackgroundRun begun = made.apply(executor);
        run = Optional.of(begun);
        return begun;
    }

    /** Ends the run, whether it waits or has begun. */
    void cancel() {
        waiting.ifPresent(each -> each.cancel(false));
        waiting = Optional.empty();
        run.ifPresent(BackgroundRun::cancel);
        run = Optional.empty();
    }

    boolean isEnded() {
        return executor.isShutdown();
    }

    /** Ends all computing for good. */
    void end() {
        cancel();
        executor.shutdownNow();
    }
}
