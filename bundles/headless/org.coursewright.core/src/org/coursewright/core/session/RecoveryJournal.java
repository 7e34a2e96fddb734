package org.coursewright.core.session;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/**
 * Writes edits that are not saved yet to a file, in the background and soon: the last state offered is on the disk
 * within the delay and the time of one write. What is offered meanwhile replaces what waits.
 */
final class RecoveryJournal implements AutoCloseable {

    private final Path file;
    private final Duration delay;
    private final ScheduledExecutorService writer;

    /** Held while the file is written or deleted; taken before the monitor of this object. */
    private final Object fileAccess = new Object();

    private JournalEntry waiting;
    private boolean scheduled;
    private IOException failure;
    private volatile Optional<Runnable> onFailure = Optional.empty();

    RecoveryJournal(Path file, Duration delay) {
        this.file = file;
        this.delay = delay;
        this.writer = Executors.newSingleThreadScheduledExecutor(task -> {
            Thread thread = new Thread(task, "recovery journal of " + file.getFileName());
            thread.setDaemon(true);
            return thread;
        });
    }

    /** Takes a state that is to outlive this process; returns at once. */
    synchronized void offer(JournalEntry entry) {
        waiting = entry;
        schedule();
    }

    private synchronized void schedule() {
        if (!scheduled && !writer.isShutdown()) {
            scheduled = true;
            writer.schedule(this::writeInBackground, delay.toMillis(), TimeUnit.MILLISECONDS);
        }
    }

    private void writeInBackground() {
        synchronized (this) {
            scheduled = false;
        }
        try {
            writeWaiting();
        } catch (IOException e) {
            tryAgainAfter(e);
            onFailure.ifPresent(Runnable::run);
        }
    }

    /** @param listener run in the writing thread after each write that failed */
    void onFailure(Runnable listener) {
        onFailure = Optional.of(listener);
    }

    private synchronized void tryAgainAfter(IOException e) {
        failure = e;
        schedule();
    }

    private void writeWaiting() throws IOException {
        synchronized (fileAccess) {
            JournalEntry entry = peekWaiting();
            if (entry != null) {
                AtomicFile.write(file, entry.stored());
                dropIfStill(entry);
            }
        }
    }

    private synchronized JournalEntry peekWaiting() {
        return waiting;
    }

    private synchronized void dropIfStill(JournalEntry written) {
        if (waiting == written) {
            waiting = null;
        }
    }

    /**
     * Makes sure that the file, if there is one, holds the last state offered. So a kill between saving the project and
     * {@link #clear()} leaves a journal that says the same as the project.
     *
     * @throws IOException if it cannot be written
     */
    void settle() throws IOException {
        if (Files.exists(file)) {
            writeWaiting();
        }
    }

    /** @return why the last write failed, if it did since this was last asked */
    synchronized Optional<IOException> takeFailure() {
        Optional<IOException> taken = Optional.ofNullable(failure);
        failure = null;
        return taken;
    }

    /**
     * Forgets everything offered so far and deletes the file.
     *
     * @throws IOException if it cannot be deleted
     */
    void clear() throws IOException {
        synchronized (fileAccess) {
            synchronized (this) {
                waiting = null;
            }
            Files.deleteIfExists(file);
        }
    }

    /** Ends writing; the file stays as it is. */
    @Override
    public void close() {
        writer.shutdownNow();
    }
}
