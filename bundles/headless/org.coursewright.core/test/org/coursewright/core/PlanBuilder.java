package org.coursewright.core;

import java.math.BigDecimal;

import org.coursewright.measure.Length;
import org.coursewright.measure.LengthFormat;
import org.coursewright.model.building.Bond;
import org.coursewright.model.building.BuildingFactory;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.OpeningKind;
import org.coursewright.model.building.Storey;
import org.coursewright.model.building.TopPoint;
import org.coursewright.model.building.Wall;
import org.coursewright.model.catalogue.CatalogueFactory;
import org.coursewright.model.catalogue.LintelType;
import org.coursewright.model.catalogue.UnitType;
import org.coursewright.model.project.Project;
import org.coursewright.model.project.ProjectFactory;

/** Builds small projects in inches: one storey, one unit type of 14 x 10 x 4 in, walls and openings by a line each. */
public final class PlanBuilder {

    private final Project project = ProjectFactory.eINSTANCE.createProject();
    private final Storey storey = BuildingFactory.eINSTANCE.createStorey();
    private final UnitType unit = CatalogueFactory.eINSTANCE.createUnitType();

    public PlanBuilder() {
        project.setBuilding(BuildingFactory.eINSTANCE.createBuilding());
        project.setCatalogue(CatalogueFactory.eINSTANCE.createCatalogue());
        project.getBuilding().getStoreys().add(storey);
        project.getCatalogue().getUnitTypes().add(unit);
        storey.setMark("1");
        unit.setMark("B14");
        unit.setLength(in("14"));
        unit.setWidth(in("10"));
        unit.setHeight(in("4"));
        unit.setMass(BigDecimal.valueOf(14));
    }

    public static Length in(String inches) {
        return LengthFormat.INCHES.parse(inches);
    }

    public Wall wall(String mark, String fromX, String fromY, String toX, String toY, Bond bond, String height) {
        Wall wall = BuildingFactory.eINSTANCE.createWall();
        wall.setMark(mark);
        wall.setFromX(in(fromX));
        wall.setFromY(in(fromY));
        wall.setToX(in(toX));
        wall.setToY(in(toY));
        wall.setBond(bond);
        wall.setHeight(in(height));
        wall.setUnitType(unit);
        storey.getWalls().add(wall);
        return wall;
    }

    public Wall wall(String mark, String fromX, String fromY, String toX, String toY) {
        return wall(mark, fromX, fromY, toX, toY, Bond.STRETCHER, "90");
    }

    public Opening opening(Wall wall, String mark, String offset, String width, String sill, String height) {
        Opening opening = BuildingFactory.eINSTANCE.createOpening();
        opening.setMark(mark);
        opening.setKind(OpeningKind.WINDOW);
        opening.setOffset(in(offset));
        opening.setWidth(in(width));
        opening.setSill(in(sill));
        opening.setHeight(in(height));
        wall.getOpenings().add(opening);
        return opening;
    }

    public LintelType lintel(String mark, String depth, String bearing) {
        LintelType lintel = CatalogueFactory.eINSTANCE.createLintelType();
        lintel.setMark(mark);
        lintel.setHeight(in(depth));
        lintel.setBearing(in(bearing));
        project.getCatalogue().getLintelTypes().add(lintel);
        return lintel;
    }

    public void top(Wall wall, String offset, String height) {
        TopPoint point = BuildingFactory.eINSTANCE.createTopPoint();
        point.setOffset(in(offset));
        point.setHeight(in(height));
        wall.getTopProfile().add(point);
    }

    public UnitType unit() {
        return unit;
    }

    public Project project() {
        return project;
    }
}
