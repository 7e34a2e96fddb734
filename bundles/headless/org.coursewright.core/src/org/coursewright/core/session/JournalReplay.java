package org.coursewright.core.session;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

import org.coursewright.model.project.Project;

/** Decides at the start of a session what to do with a journal that an earlier one left behind. */
final class JournalReplay {

    private static final Duration LEFT_FOR_GOOD = Duration.ofMinutes(1);

    private final Path file;
    private final SessionFiles files;
    private final ProjectStore store;

    JournalReplay(Path file, SessionFiles files, ProjectStore store) {
        this.file = file;
        this.files = files;
        this.store = store;
    }

    /**
     * The project to start with.
     *
     * @param project as last edited
     * @param recovery what was done with edits left behind, if there were any
     */
    record Start(Project project, Optional<Recovery> recovery) {
    }

    /**
     * @param saved the project file's content
     * @return the project as it was last edited, as far as that is certain
     * @throws ProjectFileException if the project file is damaged, whatever the journal says, or files cannot be moved
     */
    Start start(byte[] saved) throws ProjectFileException {
        Project project = store.parse(file, saved);
        try {
            files.removeLeftovers(Instant.now().minus(LEFT_FOR_GOOD));
            if (!Files.exists(files.journal())) {
                return new Start(project, Optional.empty());
            }
            Optional<JournalEntry> entry = JournalEntry.fromStored(Files.readAllBytes(files.journal()));
            return entry.isPresent()
                    ? withEntry(project, Fingerprint.of(saved), entry.get())
                    : damaged(project, "their journal is cut short or damaged.");
        } catch (IOException e) {
            throw new ProjectFileException(file,
                    "what an earlier session left in %s and beside it cannot be read or moved. "
                            .formatted(files.journal()) + "Check that you may read and write it, or move it away.",
                    e);
        }
    }

    private Start withEntry(Project project, Fingerprint saved, JournalEntry entry) throws IOException {
        if (Fingerprint.of(entry.content()).equals(saved)) {
            // ended by force after saving and before the journal was cleared
            Files.delete(files.journal());
            return new Start(project, Optional.empty());
        }
        if (!entry.base().equals(saved)) {
            return keptAside(project, entry);
        }
        try {
            return new Start(store.parse(file, entry.content()), Optional.of(Recovery.replayed(entry.editedAt())));
        } catch (ProjectFileException e) {
            // intact by its checksum, yet unreadable: written by a newer version
            return damaged(project, e.getMessage());
        }
    }

    private Start keptAside(Project project, JournalEntry entry) throws IOException {
        Path aside = files.recovered(Instant.now(), ProjectStore.EXTENSION);
        AtomicFile.write(aside, entry.content());
        Files.delete(files.journal());
        return new Start(project, Optional.of(Recovery.keptAside(entry.editedAt(), aside)));
    }

    private Start damaged(Project project, String reason) throws IOException {
        Path aside = files.recovered(Instant.now(), ".journal");
        Files.move(files.journal(), aside, StandardCopyOption.ATOMIC_MOVE);
        return new Start(project, Optional.of(Recovery.damaged(aside, reason)));
    }
}
