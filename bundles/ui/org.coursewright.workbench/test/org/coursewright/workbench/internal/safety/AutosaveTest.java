package org.coursewright.workbench.internal.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.coursewright.core.session.ProjectSession;
import org.coursewright.core.session.ProjectStore;
import org.coursewright.model.edit.command.NameProjectCommand;
import org.coursewright.model.project.Project;
import org.coursewright.model.project.ProjectFactory;
import org.coursewright.workbench.OpenProjects;
import org.coursewright.workbench.internal.preference.Preferences;
import org.coursewright.workbench.notice.Notice;
import org.coursewright.workbench.notice.Notices;
import org.eclipse.jface.preference.PreferenceStore;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AutosaveTest {

    private static final int MINUTES = 7;

    @TempDir
    private Path folder;
    private Path file;
    private ProjectSession session;
    private final PreferenceStore choices = new PreferenceStore();
    private final OpenProjects projects = new OpenProjects();
    private final Notices notices = new Notices(projects);
    private final List<Integer> delays = new ArrayList<>();
    private final List<Runnable> due = new ArrayList<>();

    @BeforeEach
    void openAProject() throws Exception {
        file = folder.resolve("shed.coursewright");
        Project project = ProjectFactory.eINSTANCE.createProject();
        project.setName("Shed");
        new ProjectStore().save(project, file);
        choices.setValue(Preferences.AUTOSAVE, true);
        choices.setValue(Preferences.AUTOSAVE_MINUTES, MINUTES);
        projects.addListener(new Autosave(projects, new Preferences(choices), notices, (delay, task) -> {
            delays.add(delay);
            due.add(task);
        }));
        projects.open(file);
        session = projects.active().orElseThrow();
    }

    @AfterEach
    void closeTheProject() {
        projects.closeAll();
    }

    @Test
    void projectIsSavedSomeMinutesAfterTheFirstUnsavedEdit() throws Exception {
        edit("Hut");
        edit("Barn");
        assertThat(delays).containsExactly(MINUTES * 60_000);
        assertThat(nameInFile()).isEqualTo("Shed");

        passTheTime();
        assertThat(nameInFile()).isEqualTo("Barn");
        assertThat(session.isDirty()).isFalse();
        assertThat(session.canUndo()).isTrue();
    }

    @Test
    void editAfterwardsIsSavedAfterAnotherWait() throws Exception {
        edit("Hut");
        passTheTime();
        edit("Barn");
        passTheTime();

        assertThat(nameInFile()).isEqualTo("Barn");
    }

    @Test
    void savingByHandStartsTheWaitAnew() throws Exception {
        edit("Hut");
        session.save();
        edit("Barn");
        due.remove(0).run();

        assertThat(nameInFile()).isEqualTo("Hut");
    }

    @Test
    void nothingIsSavedWhenItIsSwitchedOff() throws Exception {
        edit("Hut");
        choices.setValue(Preferences.AUTOSAVE, false);
        passTheTime();
        edit("Barn");

        assertThat(due).isEmpty();
        assertThat(nameInFile()).isEqualTo("Shed");
    }

    @Test
    void projectThatWasClosedIsLeftAlone() throws Exception {
        edit("Hut");
        projects.closeAll();
        passTheTime();

        assertThat(nameInFile()).isEqualTo("Shed");
    }

    @Test
    void refusalToSaveIsToldOnceAndEndsWithTheNextSaving() throws Exception {
        byte[] before = Files.readAllBytes(file);
        Files.writeString(file, "changed by another program");
        edit("Hut");
        passTheTime();
        edit("Barn");
        passTheTime();
        assertThat(notices.all()).singleElement().extracting(Notice::message).asString()
                .contains("Saving by itself did not work.").contains("another program has changed the file");

        Files.write(file, before);
        session.save();
        assertThat(notices.all()).isEmpty();
    }

    private void edit(String name) {
        session.execute(new NameProjectCommand(session.project(), name));
    }

    private void passTheTime() {
        List<Runnable> waiting = List.copyOf(due);
        due.clear();
        waiting.forEach(Runnable::run);
    }

    private String nameInFile() throws IOException {
        return Files.readString(file).replaceFirst("(?s).*<[^>]*?\\sname=\"([^\"]*)\".*", "$1");
    }
}
