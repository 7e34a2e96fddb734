package org.coursewright.workbench.tests;

import java.nio.file.Path;

import org.coursewright.core.session.ProjectFileException;
import org.coursewright.core.session.ProjectStore;
import org.coursewright.measure.DisplayUnit;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Building;
import org.coursewright.model.building.BuildingFactory;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.OpeningKind;
import org.coursewright.model.building.Storey;
import org.coursewright.model.building.Wall;
import org.coursewright.model.catalogue.Catalogue;
import org.coursewright.model.catalogue.CatalogueFactory;
import org.coursewright.model.catalogue.UnitType;
import org.coursewright.model.project.Project;
import org.coursewright.model.project.ProjectFactory;

/**
 * One room of four walls with a door, shown in inches; 22 courses of a 4 in unit and a 1/2 in bed joint high, the door 18.
 */
final class SampleProject {

    static final String NAME = "Tool shed";

    private static final int LONG_SIDE = 240;
    private static final int SHORT_SIDE = 160;
    private static final int HEIGHT = 99;
    private static final int[][] CORNERS = {{0, 0}, {LONG_SIDE, 0}, {LONG_SIDE, SHORT_SIDE}, {0, SHORT_SIDE}};

    private SampleProject() {
    }

    /** Writes the project into a folder and returns its file. */
    static Path in(Path folder) throws ProjectFileException {
        Path file = folder.resolve("shed.coursewright");
        new ProjectStore().save(project(), file);
        return file;
    }

    private static Project project() {
        Project project = ProjectFactory.eINSTANCE.createProject();
        project.setName(NAME);
        project.setDisplayUnit(DisplayUnit.INCH);
        project.setSite(ProjectFactory.eINSTANCE.createSite());
        project.setCatalogue(catalogue());
        project.setBondRule(BuildingFactory.eINSTANCE.createBondRule());
        project.setBuilding(building(project.getCatalogue().getUnitTypes().get(0)));
        return project;
    }

    private static Catalogue catalogue() {
        Catalogue catalogue = CatalogueFactory.eINSTANCE.createCatalogue();
        UnitType unit = CatalogueFactory.eINSTANCE.createUnitType();
        unit.setMark("Block 14");
        unit.setLength(Length.ofInches(14));
        unit.setWidth(Length.ofInches(10));
        unit.setHeight(Length.ofInches(4));
        catalogue.getUnitTypes().add(unit);
        return catalogue;
    }

    private static Building building(UnitType unit) {
        Storey storey = BuildingFactory.eINSTANCE.createStorey();
        storey.setMark("Ground");
        for (int side = 0; side < CORNERS.length; side++) {
            Wall wall = wall("W" + (side + 1), CORNERS[side], CORNERS[(side + 1) % CORNERS.length]);
            wall.setUnitType(unit);
            storey.getWalls().add(wall);
        }
        storey.getWalls().get(0).getOpenings().add(door());
        Building building = BuildingFactory.eINSTANCE.createBuilding();
        building.getStoreys().add(storey);
        return building;
    }

    private static Wall wall(String mark, int[] from, int[] to) {
        Wall wall = BuildingFactory.eINSTANCE.createWall();
        wall.setMark(mark);
        wall.setFromX(Length.ofInches(from[0]));
        wall.setFromY(Length.ofInches(from[1]));
        wall.setToX(Length.ofInches(to[0]));
        wall.setToY(Length.ofInches(to[1]));
        wall.setHeight(Length.ofInches(HEIGHT));
        return wall;
    }

    private static Opening door() {
        Opening door = BuildingFactory.eINSTANCE.createOpening();
        door.setMark("D1");
        door.setKind(OpeningKind.DOOR);
        door.setOffset(Length.ofInches(48));
        door.setWidth(Length.ofInches(36));
        door.setHeight(Length.ofInches(81));
        return door;
    }
}
