package org.coursewright.cli.project;

import java.util.List;
import java.util.Optional;

import org.coursewright.model.building.Building;
import org.coursewright.model.building.Storey;
import org.coursewright.model.building.Wall;
import org.coursewright.model.catalogue.Catalogue;
import org.coursewright.model.catalogue.LintelType;
import org.coursewright.model.catalogue.UnitType;
import org.coursewright.model.project.Marked;
import org.coursewright.model.project.Project;

/** The parts of a project, empty where a file leaves them out. */
record Contents(Project project) {

    String name() {
        return Optional.ofNullable(project.getName()).filter(name -> !name.isBlank()).orElse("(without a name)");
    }

    List<Storey> storeys() {
        return Optional.ofNullable(project.getBuilding()).map(Building::getStoreys).map(List::<Storey>copyOf)
                .orElse(List.of());
    }

    List<Wall> walls() {
        return storeys().stream().flatMap(storey -> storey.getWalls().stream()).toList();
    }

    long openings() {
        return walls().stream().mapToLong(wall -> wall.getOpenings().size()).sum();
    }

    List<UnitType> units() {
        return catalogue().map(Catalogue::getUnitTypes).map(List::<UnitType>copyOf).orElse(List.of());
    }

    List<LintelType> lintels() {
        return catalogue().map(Catalogue::getLintelTypes).map(List::<LintelType>copyOf).orElse(List.of());
    }

    /** @return how much there is, such as {@code 14 walls, 12 openings, 1 storey} */
    String summary() {
        return String.join(", ", counted(walls().size(), "wall"), counted(openings(), "opening"),
                counted(storeys().size(), "storey"), counted(units().size(), "unit type"));
    }

    private static String counted(long count, String noun) {
        return "%d %s%s".formatted(count, noun, count == 1 ? "" : "s");
    }

    static String mark(Marked element) {
        return Optional.ofNullable(element).map(Marked::getMark).filter(mark -> !mark.isBlank())
                .orElse("(without a mark)");
    }

    private Optional<Catalogue> catalogue() {
        return Optional.ofNullable(project.getCatalogue());
    }
}
