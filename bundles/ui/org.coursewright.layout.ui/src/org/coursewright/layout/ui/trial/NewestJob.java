package org.coursewright.layout.ui.trial;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicReference;

import org.coursewright.measure.Progress;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;

/**
 * Works in the background on the newest request only: those that were overtaken before they were begun are left out.
 *
 * @param <T> type of the requests
 */
final class NewestJob<T> extends Job {

    private final Work<T> work;
    private final AtomicReference<Asked<T>> newest = new AtomicReference<>(new Asked<>(Optional.empty()));
    private volatile boolean ended;

    /** What was asked last, the same object as long as nothing else is; empty if it is done or not wanted any more. */
    private static final class Asked<T> {

        private final Optional<T> request;

        Asked(Optional<T> request) {
            this.request = request;
        }
    }

    /**
     * What is done for a request.
     *
     * @param <T> type of the requests
     */
    @FunctionalInterface
    interface Work<T> {

        /**
         * @param request the newest
         * @param ending cancelled once nothing is wanted any more
         * @param overtaken cancelled once there is a newer request too, or this one is dropped
         */
        void on(T request, Progress ending, Progress overtaken);
    }

    NewestJob(String name, Work<T> work) {
        super(name);
        this.work = work;
        setSystem(true);
        setPriority(INTERACTIVE);
    }

    void ask(T request) {
        askAfter(request, 0);
    }

    void askAfter(T request, long millis) {
        newest.set(new Asked<>(Optional.of(request)));
        schedule(millis);
    }

    /** What was asked last is not wanted any more. */
    void drop() {
        newest.set(new Asked<>(Optional.empty()));
    }

    /** Nothing is wanted any more. */
    void end() {
        ended = true;
        cancel();
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        Asked<T> mine = newest.get();
        try {
            mine.request.filter(each -> !ended).ifPresent(each -> work.on(each, Progress.until(() -> ended),
                    Progress.until(() -> ended || newest.get() != mine)));
            newest.compareAndSet(mine, new Asked<>(Optional.empty()));
        } catch (CancellationException e) {
            return new Status(IStatus.CANCEL, NewestJob.class, e.getMessage());
        }
        return Status.OK_STATUS;
    }
}
