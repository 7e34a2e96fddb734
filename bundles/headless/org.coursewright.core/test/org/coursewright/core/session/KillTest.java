package org.coursewright.core.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Random;

import org.coursewright.core.session.EditingProcess.Mode;
import org.coursewright.core.session.EditingProcess.Report;
import org.coursewright.model.edit.command.NameProjectCommand;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A process that is killed at any moment leaves a readable project, and loses no edit older than two seconds. */
class KillTest {

    private static final int SAVES = 200;
    private static final int LEAST_KILLS = 8;
    private static final int KILLS_BETWEEN_SAVES = 3;
    private static final Duration PROMISE = Duration.ofSeconds(2);

    private final Random random = new Random(20260302);

    @TempDir
    private Path folder;
    private Path file;

    @BeforeEach
    void makeProject() throws ProjectFileException {
        file = folder.resolve("row.coursewright");
        var project = SampleProjects.ofWalls(50);
        project.setName("Edit 0");
        new ProjectStore().save(project, file);
    }

    @Test
    void killDuringSavesLeavesAReadableProjectWithEverySavedEdit()
            throws IOException, InterruptedException, ProjectFileException {
        int saves = 0;
        for (int kills = 0; saves < SAVES || kills < LEAST_KILLS; kills++) {
            EditingProcess process = EditingProcess.start(file, Mode.SAVE, Duration.ZERO);
            process.awaitFirstEdit();
            Thread.sleep(random.nextInt(1000));
            List<Report> reports = process.kill();
            int lastSaved = last(reports, "saved", Instant.MAX);
            int kept = recoverAndSave();
            assertThat(kept).isBetween(lastSaved, last(reports, "edited", Instant.MAX) + 1);
            saves += reports.stream().filter(report -> report.what().equals("saved")).count();
        }
    }

    @Test
    void killBetweenSavesLosesNoEditOlderThanTwoSeconds()
            throws IOException, InterruptedException, ProjectFileException {
        for (int kills = 0; kills < KILLS_BETWEEN_SAVES; kills++) {
            EditingProcess process = EditingProcess.start(file, Mode.EDIT_ONLY, Duration.ofMillis(10));
            process.awaitFirstEdit();
            Thread.sleep(PROMISE.toMillis() + random.nextInt(600));
            Instant killed = Instant.now();
            List<Report> reports = process.kill();
            int promised = last(reports, "edited", killed.minus(PROMISE));
            assertThat(promised).as("edits older than the promise").isGreaterThan(reports.get(0).number());
            assertThat(recoverAndSave()).isBetween(promised, last(reports, "edited", Instant.MAX) + 1);
        }
    }

    /** The number of the last such report until a moment; the number at the opening if there is none. */
    private static int last(List<Report> reports, String what, Instant until) {
        return reports.stream().filter(report -> report.what().equals(what) || report.what().equals("opened"))
                .filter(report -> !report.at().isAfter(until) || report.what().equals("opened"))
                .mapToInt(Report::number).max().orElseThrow();
    }

    private int recoverAndSave() throws ProjectFileException {
        assertThat(SampleProjects.walls(new ProjectStore().load(file))).hasSize(50);
        try (ProjectSession session = ProjectSession.open(file)) {
            assertThat(session.recovery().map(Recovery::outcome)).isIn(Optional.empty(),
                    Optional.of(Recovery.Outcome.REPLAYED));
            assertThat(SampleProjects.walls(session.project())).hasSize(50);
            session.save();
            return EditingProcess.numberIn(session);
        }
    }

    @Test
    void projectOpenInAnotherProcessNamesThatProcess() throws IOException, InterruptedException, ProjectFileException {
        EditingProcess process = EditingProcess.start(file, Mode.EDIT_ONLY, Duration.ofSeconds(60));
        process.awaitFirstEdit();
        assertThatThrownBy(() -> ProjectSession.open(file)).isInstanceOfSatisfying(ProjectInUseException.class,
                e -> assertThat(e.holder().process()).isEqualTo(process.number()))
                .hasMessageContaining("process " + process.number());
        process.kill();
        try (ProjectSession session = ProjectSession.open(file)) {
            session.execute(new NameProjectCommand(session.project(), "Edit 1"));
            assertThat(session.isDirty()).isTrue();
        }
    }
}
