package org.coursewright.estimate.ui.tests;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;

import org.eclipse.swt.widgets.Display;

/**
 * Turns the event loop and measures each turn: as long as one takes, the window answers nobody. The processor's time of the
 * user interface thread is told beside the time on the clock, for the machine may be busy with other things.
 */
final class Turns implements AutoCloseable {

    private static final Duration PATIENCE = Duration.ofSeconds(120);
    private static final Duration REST = Duration.ofMillis(2);
    private static final Duration LOOK = Duration.ofMillis(5);

    private final Display display = Display.getCurrent();
    private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    private final AtomicBoolean watching = new AtomicBoolean(true);
    private final Thread watcher;

    private volatile long turn;
    private volatile boolean busy;
    private volatile StackTraceElement[] seen = {};
    private Longest longest;

    Turns() {
        Thread watched = Thread.currentThread();
        watcher = new Thread(() -> watch(watched), "watches the user interface");
        watcher.setDaemon(true);
        watcher.start();
    }

    /**
     * The turns that somebody would have noticed.
     *
     * @param clock of the longest
     * @param processor of the longest by that measure
     * @param over how many took more than the aim of the processor's time
     * @param where our own code that was last seen in the longest, empty if none was
     */
    record Longest(Duration clock, Duration processor, int over, String where) {

        private static final Longest NONE = new Longest(Duration.ZERO, Duration.ZERO, 0, "");

        private Longest with(Duration onClock, Duration onProcessor, Duration aim, String place) {
            boolean worse = onProcessor.compareTo(processor) > 0;
            return new Longest(onClock.compareTo(clock) > 0 ? onClock : clock, worse ? onProcessor : processor,
                    over + (onProcessor.compareTo(aim) > 0 ? 1 : 0), worse ? place : where);
        }
    }

    /** Lets the window do something, as a key or a click does, and turns until it is done with all that follows. */
    Longest until(Duration aim, BooleanSupplier done, Runnable first) {
        longest = Longest.NONE;
        display.asyncExec(first);
        Instant end = Instant.now().plus(PATIENCE);
        boolean more = true;
        while (more || !done.getAsBoolean()) {
            rest(more);
            if (Instant.now().isAfter(end)) {
                throw new AssertionError("Not done within " + PATIENCE + ".");
            }
            more = measured(aim);
        }
        return longest;
    }

    /** Leaves the processor to what is done in the background. */
    private static void rest(boolean more) {
        if (!more) {
            LockSupport.parkNanos(REST.toNanos());
        }
    }

    private boolean measured(Duration aim) {
        seen = new StackTraceElement[0];
        turn++;
        long clock = System.nanoTime();
        long processor = threads.getCurrentThreadCpuTime();
        busy = true;
        boolean more = display.readAndDispatch();
        busy = false;
        longest = longest.with(Duration.ofNanos(System.nanoTime() - clock),
                Duration.ofNanos(threads.getCurrentThreadCpuTime() - processor), aim, place(seen));
        return more;
    }

    /** Looks what the thread does, the later in a turn the better: whatever is over soon is no matter. */
    private void watch(Thread watched) {
        while (watching.get()) {
            long before = turn;
            LockSupport.parkNanos(LOOK.toNanos());
            if (busy && turn == before) {
                StackTraceElement[] now = watched.getStackTrace();
                if (turn == before && seen.length == 0) {
                    seen = now;
                }
            }
        }
    }

    private static String place(StackTraceElement[] stack) {
        return Arrays.stream(stack).filter(frame -> frame.getClassName().startsWith("org.coursewright")
                && !frame.getClassName().contains(".tests.")).map(
                        frame -> frame.getClassName().replaceFirst(".*\\.",
                                "") + "." + frame.getMethodName())
                .findFirst().orElse("");
    }

    @Override
    public void close() {
        watching.set(false);
    }
}
