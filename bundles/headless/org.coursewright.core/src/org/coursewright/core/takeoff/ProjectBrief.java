package org.coursewright.core.takeoff;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.coursewright.core.display.ProjectFormat;
import org.coursewright.measure.LengthFormat;
import org.coursewright.model.building.Wall;
import org.coursewright.model.catalogue.UnitType;
import org.coursewright.model.project.Project;

/**
 * What the take-off needs of a project besides its layout.
 *
 * @param walls those that have a mark and a unit type with three dimensions; no other is laid
 * @param format how the project writes lengths
 */
record ProjectBrief(List<WallBrief> walls, LengthFormat format) {

    static ProjectBrief of(Project project) {
        return new ProjectBrief(Stream.ofNullable(project.getBuilding())
                .flatMap(building -> building.getStoreys().stream()).flatMap(storey -> storey.getWalls().stream())
                .filter(ProjectBrief::isMeasurable).map(WallBrief::of).toList(), ProjectFormat.of(project));
    }

    Optional<WallBrief> wall(String mark) {
        return walls.stream().filter(wall -> wall.mark().equals(mark)).findFirst();
    }

    private static boolean isMeasurable(Wall wall) {
        UnitType unit = wall.getUnitType();
        return wall.getMark() != null && unit != null && Stream.of(Optional.ofNullable(unit.getLength()),
                Optional.ofNullable(unit.getWidth()), Optional.ofNullable(unit.getHeight()))
                .allMatch(side -> side.filter(length -> length.signum() > 0).isPresent());
    }
}
