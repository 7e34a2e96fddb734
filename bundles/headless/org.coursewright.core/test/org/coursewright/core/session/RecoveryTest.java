package org.coursewright.core.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

import org.coursewright.model.edit.command.RenameCommand;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a session finds that another left behind without closing; a copy of its files stands for a killed process. */
class RecoveryTest {

    private static final SessionSettings AT_ONCE = new SessionSettings(new ProjectStore(), Duration.ZERO);

    private final ProjectStore store = new ProjectStore();

    @TempDir
    private Path folder;
    private Path file;

    @BeforeEach
    void makeProject() throws ProjectFileException, IOException {
        file = Files.createDirectory(folder.resolve("site")).resolve("row.coursewright");
        store.save(SampleProjects.ofWalls(3), file);
    }

    private Path journal() {
        return file.resolveSibling(".row.coursewright.journal");
    }

    private void leaveAnEditBehind(String mark) throws IOException, ProjectFileException {
        byte[] journal;
        try (ProjectSession session = ProjectSession.open(file, AT_ONCE)) {
            rename(session, mark);
            await(mark);
            journal = Files.readAllBytes(journal());
        }
        Files.write(journal(), journal);
    }

    private static void rename(ProjectSession session, String mark) {
        session.execute(new RenameCommand(SampleProjects.walls(session.project()).get(0), mark));
    }

    private void await(String text) throws IOException {
        Instant end = Instant.now().plusSeconds(20);
        while (!Files.exists(journal()) || !Files.readString(journal()).contains(text)) {
            assertThat(Instant.now()).as("journal written").isBefore(end);
            Thread.onSpinWait();
        }
    }

    private static String firstMark(ProjectSession session) {
        return SampleProjects.walls(session.project()).get(0).getMark();
    }

    private List<Path> keptAside() throws IOException {
        try (Stream<Path> files = Files.list(file.getParent())) {
            return files.filter(each -> each.getFileName().toString().startsWith("row.recovered-")).toList();
        }
    }

    @Test
    void editsLeftBehindAreBackAndNotYetSaved() throws IOException, ProjectFileException {
        leaveAnEditBehind("North");
        try (ProjectSession session = ProjectSession.open(file)) {
            assertThat(firstMark(session)).isEqualTo("North");
            assertThat(session.isDirty()).isTrue();
            assertThat(session.recovery()).hasValueSatisfying(recovery -> {
                assertThat(recovery.outcome()).isEqualTo(Recovery.Outcome.REPLAYED);
                assertThat(recovery.editedAt().orElseThrow()).isBetween(Instant.now().minusSeconds(60), Instant.now());
                assertThat(recovery.message()).contains("recovered");
            });
            session.save();
            assertThat(session.isDirty()).isFalse();
            assertThat(journal()).doesNotExist();
        }
        try (ProjectSession session = ProjectSession.open(file)) {
            assertThat(firstMark(session)).isEqualTo("North");
            assertThat(session.recovery()).isEmpty();
        }
    }

    @Test
    void recoveredEditsOutliveASecondKill() throws IOException, ProjectFileException {
        leaveAnEditBehind("North");
        byte[] journal = Files.readAllBytes(journal());
        ProjectSession.open(file).close();
        assertThat(journal()).as("deliberate close").doesNotExist();
        Files.write(journal(), journal);
        try (ProjectSession session = ProjectSession.open(file)) {
            assertThat(journal()).exists();
            assertThat(firstMark(session)).isEqualTo("North");
        }
    }

    @Test
    void editsOfAnotherStateOfTheFileAreKeptAside() throws IOException, ProjectFileException {
        leaveAnEditBehind("North");
        store.save(SampleProjects.ofWalls(5), file);
        try (ProjectSession session = ProjectSession.open(file)) {
            assertThat(SampleProjects.walls(session.project())).hasSize(5);
            assertThat(session.isDirty()).isFalse();
            Recovery recovery = session.recovery().orElseThrow();
            assertThat(recovery.outcome()).isEqualTo(Recovery.Outcome.KEPT_ASIDE);
            assertThat(keptAside()).singleElement().isEqualTo(recovery.keptAs().orElseThrow());
            assertThat(recovery.message()).contains(recovery.keptAs().get().getFileName().toString());
            assertThat(SampleProjects.walls(store.load(recovery.keptAs().get())).get(0).getMark()).isEqualTo("North");
        }
        assertThat(journal()).doesNotExist();
    }

    @Test
    void damagedJournalIsKeptAsideAndTheProjectOpens() throws IOException, ProjectFileException {
        leaveAnEditBehind("North");
        byte[] whole = Files.readAllBytes(journal());
        byte[] damaged = whole.clone();
        damaged[damaged.length - 20] ^= 1;
        byte[][] kinds = {damaged, Arrays.copyOf(whole, whole.length / 2), {},
                "no journal".getBytes(StandardCharsets.US_ASCII)};
        for (int i = 0; i < kinds.length; i++) {
            Files.write(journal(), kinds[i]);
            try (ProjectSession session = ProjectSession.open(file)) {
                assertThat(firstMark(session)).isEqualTo("W1");
                Recovery recovery = session.recovery().orElseThrow();
                assertThat(recovery.outcome()).isEqualTo(Recovery.Outcome.DAMAGED);
                assertThat(recovery.keptAs().orElseThrow()).hasBinaryContent(kinds[i]);
            }
            assertThat(keptAside()).hasSize(i + 1);
        }
    }

    @Test
    void intactJournalOfAnUnreadableProjectIsKeptAside() throws IOException, ProjectFileException {
        byte[] unreadable = "<project/>".getBytes(StandardCharsets.UTF_8);
        Files.write(journal(), new JournalEntry(Fingerprint.of(Files.readAllBytes(file)), Instant.now(), unreadable)
                .stored());
        try (ProjectSession session = ProjectSession.open(file)) {
            assertThat(session.recovery()).hasValueSatisfying(
                    recovery -> assertThat(recovery.outcome()).isEqualTo(Recovery.Outcome.DAMAGED));
        }
        assertThat(keptAside()).hasSize(1);
    }

    @Test
    void journalThatWasSavedAlreadyIsNoNews() throws IOException, ProjectFileException {
        leaveAnEditBehind("North");
        byte[] journal = Files.readAllBytes(journal());
        try (ProjectSession session = ProjectSession.open(file)) {
            session.save();
        }
        Files.write(journal(), journal);
        try (ProjectSession session = ProjectSession.open(file)) {
            assertThat(session.recovery()).isEmpty();
            assertThat(session.isDirty()).isFalse();
        }
        assertThat(keptAside()).isEmpty();
    }

    @Test
    void halfWrittenFilesOfKilledSessionsAreDeletedOnceTheyAreOld() throws IOException, ProjectFileException {
        Path old = Files.createFile(file.resolveSibling(".row.coursewright.1.tmp"));
        Path oldJournal = Files.createFile(file.resolveSibling("..row.coursewright.journal.2.tmp"));
        Path young = Files.createFile(file.resolveSibling(".row.coursewright.3.tmp"));
        Path foreign = Files.createFile(file.resolveSibling(".other.coursewright.4.tmp"));
        for (Path each : List.of(old, oldJournal, foreign)) {
            Files.setLastModifiedTime(each, FileTime.from(Instant.now().minusSeconds(120)));
        }
        ProjectSession.open(file).close();
        assertThat(old).doesNotExist();
        assertThat(oldJournal).doesNotExist();
        assertThat(young).exists();
        assertThat(foreign).exists();
    }

    @Test
    void journalOfADamagedProjectStays() throws IOException, ProjectFileException {
        leaveAnEditBehind("North");
        byte[] journal = Files.readAllBytes(journal());
        Files.writeString(file, "damaged");
        assertThatThrownBy(() -> ProjectSession.open(file)).isInstanceOf(ProjectFileException.class);
        assertThat(journal()).hasBinaryContent(journal);
    }

    @Test
    void undoneEditIsUndoneInTheJournalToo() throws IOException, ProjectFileException {
        byte[] journal;
        try (ProjectSession session = ProjectSession.open(file, AT_ONCE)) {
            rename(session, "North");
            await("North");
            session.undo();
            await("mark=\"W1\"");
            journal = Files.readAllBytes(journal());
        }
        Files.write(journal(), journal);
        try (ProjectSession session = ProjectSession.open(file)) {
            assertThat(firstMark(session)).isEqualTo("W1");
        }
    }

    @Test
    void burstOfEditsIsWrittenOnceWithItsEnd() throws IOException, ProjectFileException {
        try (ProjectSession session = ProjectSession.open(file,
                new SessionSettings(store, Duration.ofSeconds(2)))) {
            for (int i = 0; i < 20; i++) {
                rename(session, "N" + i);
            }
            assertThat(journal()).doesNotExist();
            await("N19");
        }
    }

    @Test
    void failureToWriteTheJournalIsToldWithoutAnotherEdit()
            throws IOException, ProjectFileException, InterruptedException {
        CountDownLatch told = new CountDownLatch(2);
        try (ProjectSession session = ProjectSession.open(file, AT_ONCE)) {
            session.onJournalFailure(told::countDown);
            Files.createDirectories(journal().resolve("in the way"));
            rename(session, "North");

            assertThat(told.await(20, TimeUnit.SECONDS)).as("told at each attempt").isTrue();
            Files.delete(journal().resolve("in the way"));
            Files.delete(journal());
            await("North");
        }
    }

    @Test
    void failureToWriteTheJournalIsTold() throws IOException, ProjectFileException, InterruptedException {
        List<SessionEvent.Kind> kinds = new ArrayList<>();
        try (ProjectSession session = ProjectSession.open(file, AT_ONCE)) {
            session.addListener(event -> kinds.add(event.kind()));
            Files.createDirectories(journal().resolve("in the way"));
            Instant end = Instant.now().plusSeconds(20);
            for (int i = 0; !kinds.contains(SessionEvent.Kind.JOURNAL_FAILED); i++) {
                assertThat(Instant.now()).as("told").isBefore(end);
                rename(session, "N" + i);
                Thread.sleep(10);
            }
            Files.delete(journal().resolve("in the way"));
            Files.delete(journal());
            rename(session, "South");
            await("South");
        }
    }
}
