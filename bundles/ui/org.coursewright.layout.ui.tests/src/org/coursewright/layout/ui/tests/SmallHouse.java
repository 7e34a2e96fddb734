package org.coursewright.layout.ui.tests;

import java.nio.file.Path;

import org.coursewright.core.session.ProjectFileException;
import org.coursewright.core.session.ProjectStore;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.coursewright.measure.Money;
import org.coursewright.model.building.BuildingFactory;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.OpeningKind;
import org.coursewright.model.building.Storey;
import org.coursewright.model.building.Wall;
import org.coursewright.model.catalogue.CatalogueFactory;
import org.coursewright.model.catalogue.UnitType;
import org.coursewright.model.estimate.EstimateFactory;
import org.coursewright.model.estimate.Rate;
import org.coursewright.model.estimate.RateKind;
import org.coursewright.model.project.Project;
import org.coursewright.model.project.ProjectFactory;

/**
 * Three walls of 14 in units round two corners, the third drawn against the way round; a window in the first that fits no
 * unit where it is and may move by 3 in. Only the units have a rate.
 */
final class SmallHouse {

    static final String NAME = "Small house";

    private SmallHouse() {
    }

    /** Writes the project into a folder and returns its file. */
    static Path in(Path folder) throws ProjectFileException {
        Path file = folder.resolve("small.coursewright");
        new ProjectStore().save(project(), file);
        return file;
    }

    static Length inches(String text) {
        return LengthFormat.INCHES.parse(text);
    }

    private static Project project() {
        Project project = ProjectFactory.eINSTANCE.createProject();
        project.setName(NAME);
        project.setBondRule(BuildingFactory.eINSTANCE.createBondRule());
        project.setCatalogue(CatalogueFactory.eINSTANCE.createCatalogue());
        UnitType unit = unit();
        project.getCatalogue().getUnitTypes().add(unit);
        Storey storey = BuildingFactory.eINSTANCE.createStorey();
        storey.setMark("1");
        Wall first = wall(unit, "W1", "0", "0", "144 1/2", "0");
        first.getOpenings().add(window());
        storey.getWalls().add(first);
        storey.getWalls().add(wall(unit, "W2", "144 1/2", "0", "144 1/2", "101 1/2"));
        storey.getWalls().add(wall(unit, "W3", "0", "101 1/2", "144 1/2", "101 1/2"));
        project.setBuilding(BuildingFactory.eINSTANCE.createBuilding());
        project.getBuilding().getStoreys().add(storey);
        project.setCurrency("USD");
        project.setEstimate(EstimateFactory.eINSTANCE.createEstimate());
        project.getEstimate().getRates().add(rate(unit));
        return project;
    }

    private static Rate rate(UnitType unit) {
        Rate rate = EstimateFactory.eINSTANCE.createRate();
        rate.setMark(unit.getMark());
        rate.setKind(RateKind.MATERIAL);
        rate.setPrice(Money.fromStored("1.50 USD"));
        rate.setUnitCode("H87");
        return rate;
    }

    private static UnitType unit() {
        UnitType unit = CatalogueFactory.eINSTANCE.createUnitType();
        unit.setMark("B14");
        unit.setLength(inches("14"));
        unit.setWidth(inches("10"));
        unit.setHeight(inches("4"));
        unit.getSpecialLengths().add(inches("6 3/4"));
        return unit;
    }

    private static Wall wall(UnitType unit, String mark, String fromX, String fromY, String toX, String toY) {
        Wall wall = BuildingFactory.eINSTANCE.createWall();
        wall.setMark(mark);
        wall.setUnitType(unit);
        wall.setFromX(inches(fromX));
        wall.setFromY(inches(fromY));
        wall.setToX(inches(toX));
        wall.setToY(inches(toY));
        wall.setHeight(inches("36"));
        return wall;
    }

    private static Opening window() {
        Opening window = BuildingFactory.eINSTANCE.createOpening();
        window.setMark("N1");
        window.setKind(OpeningKind.WINDOW);
        window.setOffset(inches("45"));
        window.setWidth(inches("44"));
        window.setSill(inches("9"));
        window.setHeight(inches("27"));
        window.setMoveTolerance(inches("3"));
        return window;
    }
}
