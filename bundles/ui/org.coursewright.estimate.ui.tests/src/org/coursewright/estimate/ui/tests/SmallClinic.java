package org.coursewright.estimate.ui.tests;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;

import org.coursewright.core.session.ProjectFileException;
import org.coursewright.core.session.ProjectSession;
import org.coursewright.model.building.Wall;
import org.coursewright.model.edit.command.RemoveScenarioCommand;
import org.coursewright.model.edit.command.RemoveWallCommand;
import org.coursewright.model.estimate.Scenario;

/** The demo building with its store and its screen walls only, and one scenario: laid in a moment. */
final class SmallClinic {

    private static final Path DEMO = Path.of("releng", "demo", "clinic.coursewright");
    private static final Set<String> WALLS = Set.of("S1", "S2", "S3", "C1", "C2");
    private static final String SCENARIO = "bought blocks";

    private SmallClinic() {
    }

    /** Writes it into a folder and returns its file. */
    static Path copyInto(Path folder) throws IOException, ProjectFileException {
        Path file = wholeInto(folder);
        try (ProjectSession session = ProjectSession.open(file)) {
            reduce(session);
            session.save();
        }
        return file;
    }

    /** Copies the whole demo building into a folder and returns its file. */
    static Path wholeInto(Path folder) throws IOException {
        Path here = Path.of("").toAbsolutePath();
        while (!Files.exists(here.resolve(DEMO))) {
            here = here.getParent();
        }
        return Files.copy(here.resolve(DEMO), Files.createDirectories(folder).resolve("clinic.coursewright"));
    }

    private static void reduce(ProjectSession session) {
        List<Wall> walls = session.project().getBuilding().getStoreys().stream().flatMap(storey -> storey.getWalls()
                .stream()).filter(wall -> !WALLS.contains(wall.getMark())).toList();
        walls.forEach(wall -> session.execute(new RemoveWallCommand(wall)));
        List<Scenario> scenarios = session.project().getEstimate().getScenarios().stream().filter(
                scenario -> !SCENARIO.equals(scenario.getMark())).toList();
        scenarios.forEach(scenario -> session.execute(new RemoveScenarioCommand(scenario)));
    }
}
