package org.coursewright.core.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

import org.coursewright.core.derive.Derived;
import org.coursewright.core.derive.ModelRead;
import org.coursewright.core.derive.NodeState;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Storey;
import org.coursewright.model.building.Wall;
import org.coursewright.model.edit.command.AddWallCommand;
import org.coursewright.model.edit.command.ChangeWallHeightCommand;
import org.coursewright.model.edit.command.CommandRefusedException;
import org.coursewright.model.edit.command.RemoveWallCommand;
import org.coursewright.model.edit.command.RenameCommand;
import org.coursewright.model.project.Project;
import org.eclipse.emf.common.command.AbstractCommand;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProjectSessionTest {

    private final ProjectStore store = new ProjectStore();

    @TempDir
    private Path folder;
    private Path file;

    @BeforeEach
    void makeProject() throws ProjectFileException {
        file = folder.resolve("row.coursewright");
        store.save(SampleProjects.ofWalls(14), file);
    }

    private static Wall wall(ProjectSession session, int index) {
        return SampleProjects.walls(session.project()).get(index);
    }

    @Test
    void editIsUndoneRedoneAndSaved() throws ProjectFileException {
        try (ProjectSession session = ProjectSession.open(file)) {
            assertThat(session.isDirty()).isFalse();
            session.execute(new RenameCommand(wall(session, 0), "North"));
            assertThat(session.isDirty()).isTrue();
            assertThat(session.undoLabel()).hasValue("Rename Wall W1 to North");
            session.undo();
            assertThat(session.isDirty()).isFalse();
            assertThat(session.redoLabel()).hasValue("Rename Wall W1 to North");
            assertThat(session.canUndo()).isFalse();
            session.redo();
            session.save();
            assertThat(session.isDirty()).isFalse();
            assertThat(session.canUndo()).isTrue();
        }
        assertThat(SampleProjects.walls(store.load(file)).get(0).getMark()).isEqualTo("North");
    }

    @Test
    void undoAfterSaveIsDirtyAgain() throws ProjectFileException {
        try (ProjectSession session = ProjectSession.open(file)) {
            session.execute(new RenameCommand(wall(session, 0), "North"));
            session.save();
            session.undo();
            assertThat(session.isDirty()).isTrue();
        }
    }

    @Test
    void undoOfARemovalBringsBackTheIds() throws ProjectFileException, IOException {
        byte[] before = Files.readAllBytes(file);
        try (ProjectSession session = ProjectSession.open(file)) {
            session.execute(new RemoveWallCommand(wall(session, 3)));
            session.save();
            assertThat(file).satisfies(f -> assertThat(Files.readAllBytes(f)).isNotEqualTo(before));
            session.undo();
            session.save();
        }
        assertThat(file).hasBinaryContent(before);
    }

    @Test
    void redoOfAnAdditionKeepsTheId() throws ProjectFileException {
        try (ProjectSession session = ProjectSession.open(file)) {
            Wall added = EcoreUtil.copy(wall(session, 6));
            added.setMark("W99");
            session.execute(new AddWallCommand((Storey) wall(session, 6).eContainer(), added));
            String id = added.eResource().getURIFragment(added);
            session.undo();
            session.redo();
            assertThat(added.eResource().getURIFragment(added)).isEqualTo(id).startsWith("_");
        }
    }

    @Test
    void refusedCommandTellsWhyAndChangesNothing() throws ProjectFileException {
        try (ProjectSession session = ProjectSession.open(file)) {
            RenameCommand taken = new RenameCommand(wall(session, 0), "W2");
            assertThatThrownBy(() -> session.execute(taken)).isInstanceOf(CommandRefusedException.class)
                    .hasMessageContaining("W2 is taken by another Wall");
            assertThat(session.isDirty()).isFalse();
            assertThat(session.canUndo()).isFalse();
        }
    }

    @Test
    void commandThatChangesNothingIsNoStepOfTheHistory() throws ProjectFileException {
        try (ProjectSession session = ProjectSession.open(file)) {
            session.execute(new RenameCommand(wall(session, 0), "W1"));
            assertThat(session.canUndo()).isFalse();
        }
    }

    @Test
    void failingCommandReachesTheCaller() throws ProjectFileException {
        try (ProjectSession session = ProjectSession.open(file)) {
            IllegalStateException failure = new IllegalStateException("broken");
            assertThatThrownBy(() -> session.execute(new AbstractCommand() {
                @Override
                protected boolean prepare() {
                    return true;
                }

                @Override
                public void execute() {
                    throw failure;
                }

                @Override
                public void redo() {
                    throw failure;
                }
            })).isSameAs(failure);
            session.execute(new RenameCommand(wall(session, 0), "North"));
            session.undo();
            assertThat(wall(session, 0).getMark()).isEqualTo("W1");
        }
    }

    @Test
    void listenersLearnEachStepAndWhatItAffects() throws ProjectFileException {
        List<SessionEvent> events = new ArrayList<>();
        try (ProjectSession session = ProjectSession.open(file)) {
            session.addListener(events::add);
            session.execute(new ChangeWallHeightCommand(wall(session, 0), Length.ofInches(100)));
            session.undo();
            session.redo();
            session.save();
            assertThat(events.get(0).affected()).isEqualTo(List.of(wall(session, 0)));
        }
        assertThat(events).extracting(SessionEvent::kind).containsExactly(SessionEvent.Kind.EDITED,
                SessionEvent.Kind.UNDONE, SessionEvent.Kind.REDONE, SessionEvent.Kind.SAVED, SessionEvent.Kind.CLOSED);
    }

    @Test
    void stepThroughTheEditingDomainCountsToo() throws ProjectFileException {
        List<SessionEvent> events = new ArrayList<>();
        try (ProjectSession session = ProjectSession.open(file)) {
            session.addListener(events::add);
            session.editingDomain().getCommandStack().execute(new RenameCommand(wall(session, 0), "North"));
            assertThat(session.isDirty()).isTrue();
            assertThat(events).singleElement().extracting(SessionEvent::kind).isEqualTo(SessionEvent.Kind.EDITED);
        }
    }

    @Test
    void secondSessionInThisProcessIsToldWhoHoldsTheProject() throws ProjectFileException {
        try (ProjectSession first = ProjectSession.open(file)) {
            assertThatThrownBy(() -> ProjectSession.open(file))
                    .isInstanceOfSatisfying(ProjectInUseException.class, e -> {
                        assertThat(e.holder().process()).isEqualTo(ProcessHandle.current().pid());
                        assertThat(e.holder().user()).isEqualTo(System.getProperty("user.name"));
                    }).hasMessageContaining("open already");
            assertThat(first.isDirty()).isFalse();
        }
        ProjectSession.open(file).close();
    }

    @Test
    void projectThatIsOpenIsNotReplaced() throws ProjectFileException, IOException {
        byte[] before = Files.readAllBytes(file);
        Project other = new ProjectStore().load(file);
        other.setName("Other");
        try (ProjectSession open = ProjectSession.open(file)) {
            assertThatThrownBy(() -> ProjectSession.replace(other, file)).isInstanceOf(ProjectInUseException.class);
            assertThat(open.isDirty()).isFalse();
        }
        assertThat(file).hasBinaryContent(before);

        ProjectSession.replace(other, file);

        assertThat(new ProjectStore().load(file).getName()).isEqualTo("Other");
    }

    @Test
    void secondSessionThroughALinkIsRefusedToo() throws ProjectFileException, IOException {
        Path link = Files.createSymbolicLink(folder.resolve("link.coursewright"), file);
        try (ProjectSession first = ProjectSession.open(file)) {
            assertThatThrownBy(() -> ProjectSession.open(link)).isInstanceOf(ProjectInUseException.class);
            assertThat(first.file()).isEqualTo(file);
        }
    }

    @Test
    void lockLeftByADeadProcessIsNoObstacle() throws ProjectFileException, IOException {
        Files.writeString(folder.resolve(".row.coursewright.lock"),
                "somebody\nsomewhere\nprocess 1\nsince 1 (long ago)\n");
        ProjectSession.open(file).close();
    }

    @Test
    void closingLeavesTheProjectOnly() throws ProjectFileException, IOException {
        try (ProjectSession session = ProjectSession.open(file, new SessionSettings(store, Duration.ZERO))) {
            session.execute(new RenameCommand(wall(session, 0), "North"));
            session.close();
        }
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).containsExactly(file);
        }
        assertThat(SampleProjects.walls(store.load(file)).get(0).getMark()).isEqualTo("W1");
    }

    @Test
    void failedOpeningReleasesTheLock() throws IOException, ProjectFileException {
        byte[] good = Files.readAllBytes(file);
        Files.writeString(file, "damaged");
        assertThatThrownBy(() -> ProjectSession.open(file)).isInstanceOf(ProjectFileException.class);
        Files.write(file, good);
        ProjectSession.open(file).close();
    }

    @Test
    void missingFileIsNamed() {
        assertThatThrownBy(() -> ProjectSession.open(folder.resolve("none.coursewright")))
                .isInstanceOf(ProjectFileException.class).hasMessageContaining("no such file");
    }

    @Test
    void changeByAnotherProgramIsNotOverwritten() throws ProjectFileException {
        try (ProjectSession session = ProjectSession.open(file)) {
            session.execute(new RenameCommand(wall(session, 0), "North"));
            store.save(SampleProjects.ofWalls(3), file);
            assertThatThrownBy(session::save).isInstanceOf(ProjectFileException.class)
                    .hasMessageContaining("another program has changed the file");
            assertThat(session.isDirty()).isTrue();
            Path copy = folder.resolve("copy.coursewright");
            session.saveCopy(copy);
            assertThat(SampleProjects.walls(store.load(copy))).hasSize(14);
        }
        assertThat(SampleProjects.walls(store.load(file))).hasSize(3);
    }

    @Test
    void closedSessionRefusesEdits() throws ProjectFileException {
        try (ProjectSession session = ProjectSession.open(file)) {
            RenameCommand rename = new RenameCommand(wall(session, 0), "North");
            session.close();
            assertThatThrownBy(() -> session.execute(rename)).isInstanceOf(IllegalStateException.class)
                    .hasMessageContaining("is closed");
        }
    }

    @Test
    void derivedResultsFollowEdits() throws ProjectFileException, InterruptedException {
        ModelRead<String> mark = new ModelRead<>("mark", String.class,
                project -> SampleProjects.walls(project).get(0).getMark());
        Derived<Integer> length = Derived.of("length of the mark", Integer.class, mark,
                (text, progress) -> text.length());
        BlockingQueue<NodeState<Integer>> told = new LinkedBlockingQueue<>();
        try (ProjectSession session = ProjectSession.open(file)) {
            session.derived().listen(length, Runnable::run, told::add);
            assertThat(told.poll(30, TimeUnit.SECONDS)).isEqualTo(new NodeState.Fresh<>(2));
            session.execute(new RenameCommand(wall(session, 0), "North"));
            assertThat(told.poll(30, TimeUnit.SECONDS)).isEqualTo(new NodeState.Fresh<>(5));
            session.undo();
            assertThat(session.derived().get(length)).isEqualTo(2);
        }
    }

    @Test
    void fileThatMayNotBeWrittenIsNotReplaced() throws ProjectFileException, IOException {
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("r--r--r--"));
        assumeThat(Files.isWritable(file)).as("run by the superuser, who may write anything").isFalse();
        try (ProjectSession session = ProjectSession.open(file)) {
            session.execute(new RenameCommand(wall(session, 0), "North"));
            assertThatThrownBy(session::save).isInstanceOf(ProjectFileException.class)
                    .hasMessageContaining("may write");
        }
    }

    /** An edit must not be felt: half of them take less than 50 ms in a project of 200 walls, even on a busy machine. */
    @Test
    void editOfALargeProjectIsQuick() throws ProjectFileException {
        store.save(SampleProjects.ofWalls(200), file);
        List<Duration> times = new ArrayList<>();
        try (ProjectSession session = ProjectSession.open(file)) {
            for (int i = 0; i < 101; i++) {
                ChangeWallHeightCommand command = new ChangeWallHeightCommand(wall(session, i), Length.ofInches(99));
                Instant start = Instant.now();
                session.execute(command);
                times.add(Duration.between(start, Instant.now()));
            }
        }
        times.sort(Comparator.naturalOrder());
        assertThat(times.get(times.size() / 2)).isLessThan(Duration.ofMillis(50));
    }
}
