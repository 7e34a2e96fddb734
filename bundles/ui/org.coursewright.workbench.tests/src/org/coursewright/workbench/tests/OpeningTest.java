package org.coursewright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;

import org.coursewright.core.session.ProjectSession;
import org.coursewright.model.edit.command.RenameCommand;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is said when a project cannot be opened, or was left behind by a crash. */
class OpeningTest {

    private final Window window = new Window();

    @TempDir
    private Path folder;

    @AfterEach
    void closeTheProject() {
        window.forgetEverything();
    }

    @Test
    void projectThatIsOpenElsewhereIsNotOpenedAndItsHolderIsNamed() throws Exception {
        Path file = SampleProject.in(folder);
        try (ProjectSession holder = ProjectSession.open(file)) {
            Dialogs warning = Dialogs.answer("OK");
            window.open(holder.file());

            assertTrue(warning.said().contains(System.getProperty("user.name")), warning::said);
            assertTrue(warning.said().contains(Long.toString(ProcessHandle.current().pid())), warning::said);
            assertEquals(0, window.projects().sessions().size());
        }
    }

    @Test
    void fileThatIsNoProjectIsRefusedWithItsName() throws Exception {
        Path file = Files.writeString(folder.resolve("letter.coursewright"), "Dear builder");
        Dialogs error = Dialogs.answer("OK");
        window.open(file);

        assertTrue(error.said().contains("letter.coursewright"), error::said);
        assertEquals(0, window.projects().sessions().size());
    }

    @Test
    void missingFileIsRefusedWithItsName() throws Exception {
        Dialogs error = Dialogs.answer("OK");
        window.open(folder.resolve("nowhere.coursewright"));

        assertTrue(error.said().contains("nowhere.coursewright"), error::said);
    }

    @Test
    void projectOpenedTwiceIsShownOnce() throws Exception {
        Path file = SampleProject.in(folder);
        window.open(file);
        window.open(file);

        assertEquals(1, window.tree().getItemCount());
    }

    @Test
    void recoveredEditsAreAnnouncedUntilDismissed() throws Exception {
        Path file = leftBehindByACrash();
        window.open(file);

        assertTrue(window.shows(SampleProject.NAME + ": Edits made until"));
        assertTrue(window.shell().getText().startsWith("*"), "recovered edits are not saved yet");
        window.item(SampleProject.NAME, "Building", "Storey Ground", "Wall North");
        Widgets.select(Widgets.find(window.shell(), Link.class, link -> link.getText().contains("Dismiss")));
        assertFalse(window.shows(SampleProject.NAME + ": Edits made until"));
    }

    @Test
    void savingRecoveredEditsEndsTheirAnnouncement() throws Exception {
        Path file = leftBehindByACrash();
        window.open(file);
        window.select(SampleProject.NAME);
        window.choose("File", "Save");

        assertFalse(window.shows(SampleProject.NAME + ": Edits made until"));
    }

    @Test
    void editsThatCannotBeKeptAgainstACrashAreToldUntilTheProjectIsSaved() throws Exception {
        Path file = SampleProject.in(folder);
        window.open(file);
        Path obstacle = Files.createDirectories(file.resolveSibling("." + file.getFileName() + ".journal/full"));
        window.select(SampleProject.NAME, "Building", "Storey Ground", "Wall W3");
        Window.type(window.field(Text.class, "Mark"), "North");
        Widgets.await(() -> window.shows(SampleProject.NAME + ": Edits cannot be kept"));

        Files.delete(obstacle);
        Files.delete(obstacle.getParent());
        window.choose("File", "Save");
        assertFalse(window.shows(SampleProject.NAME + ": Edits cannot be kept"));
    }

    /** A copy of the project and of the journal that an open session with an unsaved edit keeps beside it. */
    private Path leftBehindByACrash() throws Exception {
        Path file = SampleProject.in(folder);
        Path after = Files.createDirectory(folder.resolve("after"));
        Path journal = file.resolveSibling("." + file.getFileName() + ".journal");
        try (ProjectSession session = ProjectSession.open(file)) {
            session.execute(new RenameCommand(session.project().getBuilding().getStoreys().get(0).getWalls().get(2),
                    "North"));
            Widgets.await(() -> Files.exists(journal));
            Files.copy(journal, after.resolve(journal.getFileName()));
        }
        return Files.copy(file, after.resolve(file.getFileName()));
    }
}
