package org.coursewright.core.session;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;

import org.coursewright.model.project.Project;

/** Where a session keeps its project: in the file once it is saved, in the recovery journal beside it until then. */
final class ProjectDisk {

    private final Path file;
    private final ProjectStore store;
    private final RecoveryJournal journal;
    private Fingerprint saved;

    /**
     * @param file of the project, as the caller named it
     * @param journal file for edits that are not saved
     * @param settings of the session
     * @param content of the file when it was read
     */
    ProjectDisk(Path file, Path journal, SessionSettings settings, byte[] content) {
        this.file = file;
        this.store = settings.store();
        this.journal = new RecoveryJournal(journal, settings.journalDelay());
        this.saved = Fingerprint.of(content);
    }

    /**
     * Replaces the file as a whole, and forgets the journal.
     *
     * @throws ProjectFileException if it cannot be written, or if another program has changed it since; it is then
     *         untouched
     */
    void save(Project project) throws ProjectFileException {
        byte[] content = store.serialise(project, file);
        refuseForeignChange();
        try {
            journal.settle();
            store.store(file, content);
            saved = Fingerprint.of(content);
            journal.clear();
        } catch (IOException e) {
            throw new ProjectFileException(file, "the recovery journal beside the project cannot be written or "
                    + "deleted. Check that the disk is not full and save again.", e);
        }
    }

    private void refuseForeignChange() throws ProjectFileException {
        if (Files.exists(file) && !Fingerprint.of(store.readBytes(file)).equals(saved)) {
            throw new ProjectFileException(file, "another program has changed the file since it was opened. Save a "
                    + "copy under another name, then open the file again and compare.");
        }
    }

    /** Takes a state of the project that is to outlive this process; returns at once. */
    void keep(Project project) {
        try {
            journal.offer(new JournalEntry(saved, Instant.now(), store.serialise(project, file)));
        } catch (ProjectFileException e) {
            throw new IllegalStateException("An edit left the project in a state that no file can hold.", e);
        }
    }

    /** @return whether a state could not be kept, since this was last asked */
    boolean hasFailed() {
        return journal.takeFailure().isPresent();
    }

    /** @param listener run in a thread of the journal's each time a state could not be kept */
    void onFailure(Runnable listener) {
        journal.onFailure(listener);
    }

    /** Forgets what is not saved. */
    void close() {
        try {
            journal.close();
            journal.clear();
        } catch (IOException e) {
            throw new UncheckedIOException("The recovery journal beside the project cannot be deleted. Delete it if "
                    + "its edits are not wanted.", e);
        }
    }
}
