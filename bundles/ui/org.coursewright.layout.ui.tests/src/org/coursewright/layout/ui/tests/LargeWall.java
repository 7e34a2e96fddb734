package org.coursewright.layout.ui.tests;

import java.nio.file.Path;

import org.coursewright.core.session.ProjectFileException;
import org.coursewright.core.session.ProjectStore;
import org.coursewright.measure.DisplayUnit;
import org.coursewright.measure.Length;
import org.coursewright.model.building.BuildingFactory;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Storey;
import org.coursewright.model.building.Wall;
import org.coursewright.model.catalogue.CatalogueFactory;
import org.coursewright.model.catalogue.UnitType;
import org.coursewright.model.project.Project;
import org.coursewright.model.project.ProjectFactory;

/** A wall of more than 20,000 units: 200 courses of 100 units 290 mm long, joints of 10 mm. */
final class LargeWall {

    static final String MARK = "L1";

    private static final int COURSES = 201;
    private static final int UNITS = 100;
    private static final int MODULE = 300;
    private static final int COURSE = 100;
    private static final int JOINT = 10;

    private LargeWall() {
    }

    /** Writes the project into a folder and returns its file. */
    static Path in(Path folder) throws ProjectFileException {
        Path file = folder.resolve("large.coursewright");
        new ProjectStore().save(project(), file);
        return file;
    }

    /** The same with a window in the middle. */
    static Path withAWindow(Path folder) throws ProjectFileException {
        Path file = folder.resolve("window.coursewright");
        Project project = project();
        Opening window = BuildingFactory.eINSTANCE.createOpening();
        window.setMark("N1");
        window.setOffset(Length.ofMillimetres(UNITS / 2L * MODULE));
        window.setWidth(Length.ofMillimetres(4L * MODULE + JOINT));
        window.setSill(Length.ofMillimetres(10L * COURSE));
        window.setHeight(Length.ofMillimetres(15L * COURSE));
        project.getBuilding().getStoreys().get(0).getWalls().get(0).getOpenings().add(window);
        new ProjectStore().save(project, file);
        return file;
    }

    private static Project project() {
        Project project = ProjectFactory.eINSTANCE.createProject();
        project.setName("Large wall");
        project.setDisplayUnit(DisplayUnit.MILLIMETRE);
        project.setBondRule(BuildingFactory.eINSTANCE.createBondRule());
        project.setCatalogue(CatalogueFactory.eINSTANCE.createCatalogue());
        project.getCatalogue().getUnitTypes().add(unit());
        Storey storey = BuildingFactory.eINSTANCE.createStorey();
        storey.setMark("1");
        storey.getWalls().add(wall(project.getCatalogue().getUnitTypes().get(0)));
        project.setBuilding(BuildingFactory.eINSTANCE.createBuilding());
        project.getBuilding().getStoreys().add(storey);
        return project;
    }

    private static UnitType unit() {
        UnitType unit = CatalogueFactory.eINSTANCE.createUnitType();
        unit.setMark("Block 290");
        unit.setLength(Length.ofMillimetres(MODULE - JOINT));
        unit.setWidth(Length.ofMillimetres(MODULE / 2 - JOINT));
        unit.setHeight(Length.ofMillimetres(COURSE - JOINT));
        return unit;
    }

    private static Wall wall(UnitType unit) {
        Wall wall = BuildingFactory.eINSTANCE.createWall();
        wall.setMark(MARK);
        wall.setUnitType(unit);
        wall.setToX(Length.ofMillimetres((long) UNITS * MODULE - JOINT));
        wall.setHeight(Length.ofMillimetres((long) COURSES * (COURSE + JOINT)));
        return wall;
    }
}
