package org.coursewright.core.fit;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;
import org.coursewright.model.project.Project;

/** The walls of a project by their marks. */
final class ProjectWalls {

    private final Map<String, Wall> walls = new HashMap<>();

    ProjectWalls(Project project) {
        Optional.ofNullable(project.getBuilding()).ifPresent(building -> building.getStoreys()
                .forEach(storey -> storey.getWalls().forEach(wall -> walls.putIfAbsent(wall.getMark(), wall))));
    }

    Wall wall(String mark) {
        return Optional.ofNullable(walls.get(mark)).orElseThrow(
                () -> new IllegalArgumentException("The project has no wall %s any more.".formatted(mark)));
    }

    Opening opening(String wall, String mark) {
        return wall(wall).getOpenings().stream().filter(opening -> mark.equals(opening.getMark())).findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "Wall %s has no opening %s any more.".formatted(wall, mark)));
    }
}
