package org.coursewright.core.session;

import java.util.ArrayList;
import java.util.List;

import org.coursewright.measure.Length;
import org.coursewright.model.building.BuildingFactory;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.OpeningKind;
import org.coursewright.model.building.Storey;
import org.coursewright.model.building.Wall;
import org.coursewright.model.catalogue.CatalogueFactory;
import org.coursewright.model.catalogue.UnitType;
import org.coursewright.model.project.Project;
import org.coursewright.model.project.ProjectFactory;

/** Projects to try sessions on: rows of walls, an opening in each but every seventh. */
final class SampleProjects {

    private static final int WITHOUT_OPENING = 7;

    private SampleProjects() {
    }

    /** A project of so many walls with ids that depend on nothing but the number. */
    static Project ofWalls(int walls) {
        Project project = ProjectFactory.eINSTANCE.createProject();
        project.setName("Row of " + walls);
        project.setCatalogue(CatalogueFactory.eINSTANCE.createCatalogue());
        UnitType unit = CatalogueFactory.eINSTANCE.createUnitType();
        unit.setMark("B14");
        unit.setLength(Length.ofInches(14));
        unit.setWidth(Length.ofInches(10));
        unit.setHeight(Length.ofInches(4));
        unit.getSpecialLengths().add(Length.ofInches(7));
        project.getCatalogue().getUnitTypes().add(unit);
        project.setBuilding(BuildingFactory.eINSTANCE.createBuilding());
        Storey storey = BuildingFactory.eINSTANCE.createStorey();
        storey.setMark("G");
        project.getBuilding().getStoreys().add(storey);
        for (int i = 1; i <= walls; i++) {
            storey.getWalls().add(wall(i, unit));
        }
        ElementIds.seed(project);
        return project;
    }

    private static Wall wall(int number, UnitType unit) {
        Wall wall = BuildingFactory.eINSTANCE.createWall();
        wall.setMark("W" + number);
        wall.setFromY(Length.ofInches(100L * number));
        wall.setToX(Length.ofInches(200));
        wall.setToY(Length.ofInches(100L * number));
        wall.setHeight(Length.ofInches(96));
        wall.setUnitType(unit);
        if (number % WITHOUT_OPENING != 0) {
            wall.getOpenings().add(opening(number));
        }
        return wall;
    }

    private static Opening opening(int number) {
        Opening opening = BuildingFactory.eINSTANCE.createOpening();
        opening.setMark("D" + number);
        opening.setKind(OpeningKind.DOOR);
        opening.setOffset(Length.ofInches(40));
        opening.setWidth(Length.ofInches(36));
        opening.setHeight(Length.ofInches(84));
        return opening;
    }

    static List<Wall> walls(Project project) {
        List<Wall> walls = new ArrayList<>();
        project.getBuilding().getStoreys().forEach(storey -> walls.addAll(storey.getWalls()));
        return walls;
    }
}
