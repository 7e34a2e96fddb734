package org.coursewright.core.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.nio.file.Path;
import java.util.OptionalInt;

import org.coursewright.model.building.Wall;
import org.coursewright.model.edit.command.RenameCommand;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SessionHistoryTest {

    @TempDir
    private Path folder;
    private ProjectSession session;
    private Wall wall;

    @BeforeEach
    void renameThreeTimes() throws ProjectFileException {
        Path file = folder.resolve("row.coursewright");
        new ProjectStore().save(SampleProjects.ofWalls(2), file);
        session = ProjectSession.open(file);
        wall = SampleProjects.walls(session.project()).get(0);
        for (String mark : new String[]{"A", "B", "C"}) {
            session.execute(new RenameCommand(wall, mark));
        }
    }

    @AfterEach
    void close() {
        session.close();
    }

    @Test
    void stepsAreNamedInTheOrderTheyWereMade() {
        assertThat(session.history().steps()).hasSize(3).element(1).asString().endsWith("to B");
        assertThat(session.history().position()).isEqualTo(3);
        assertThat(session.history().saved()).isEqualTo(OptionalInt.of(0));
    }

    @Test
    void jumpingBackAndForthLeavesAllSteps() {
        session.goTo(1);
        assertThat(wall.getMark()).isEqualTo("A");
        assertThat(session.history().steps()).hasSize(3);
        assertThat(session.undoLabel()).hasValueSatisfying(label -> assertThat(label).endsWith("to A"));

        session.goTo(3);
        assertThat(wall.getMark()).isEqualTo("C");
        session.goTo(0);
        assertThat(session.isDirty()).isFalse();
    }

    @Test
    void editAfterAJumpBackReplacesWhatWasTakenBack() {
        session.goTo(1);
        session.execute(new RenameCommand(wall, "D"));

        assertThat(session.history().steps()).hasSize(2);
    }

    @Test
    void savedStateIsToldAndLostWhenNoStepLeadsThere() throws ProjectFileException {
        session.goTo(2);
        session.save();
        assertThat(session.history().saved()).isEqualTo(OptionalInt.of(2));

        session.goTo(1);
        session.execute(new RenameCommand(wall, "D"));
        assertThat(session.history().saved()).isEmpty();
    }

    @Test
    void stepThatDoesNotExistIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> session.goTo(4)).withMessageContaining("there are 3");
        assertThatIllegalArgumentException().isThrownBy(() -> session.goTo(-1));
        assertThat(wall.getMark()).isEqualTo("C");
    }
}
