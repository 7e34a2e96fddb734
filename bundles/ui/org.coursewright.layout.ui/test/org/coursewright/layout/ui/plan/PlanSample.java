package org.coursewright.layout.ui.plan;

import org.coursewright.layout.ui.plan.shape.PlanPoint;
import org.coursewright.layout.ui.plan.shape.StoreyShape;
import org.coursewright.layout.ui.plan.shape.WallShape;
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

/** A storey to be drawn wall by wall; walls are 10 in thick, of units 14 in long. */
public final class PlanSample {

    public final Project project = ProjectFactory.eINSTANCE.createProject();
    public final Storey storey = BuildingFactory.eINSTANCE.createStorey();
    private final UnitType unit = CatalogueFactory.eINSTANCE.createUnitType();

    public PlanSample() {
        unit.setMark("B14");
        unit.setLength(Length.ofInches(14));
        unit.setWidth(Length.ofInches(10));
        unit.setHeight(Length.ofInches(4));
        project.setCatalogue(CatalogueFactory.eINSTANCE.createCatalogue());
        project.getCatalogue().getUnitTypes().add(unit);
        project.setBuilding(BuildingFactory.eINSTANCE.createBuilding());
        project.getBuilding().getStoreys().add(storey);
        storey.setMark("1");
    }

    /** A room of 200 in by 150 in on centre lines: W1 south, W2 east, W3 north, W4 west. */
    public static PlanSample room() {
        PlanSample sample = new PlanSample();
        sample.wall("W1", 0, 0, 200, 0);
        sample.wall("W2", 200, 0, 200, 150);
        sample.wall("W3", 200, 150, 0, 150);
        sample.wall("W4", 0, 150, 0, 0);
        return sample;
    }

    /** Coordinates in inches. */
    public Wall wall(String mark, long fromX, long fromY, long toX, long toY) {
        Wall wall = BuildingFactory.eINSTANCE.createWall();
        wall.setMark(mark);
        wall.setFromX(Length.ofInches(fromX));
        wall.setFromY(Length.ofInches(fromY));
        wall.setToX(Length.ofInches(toX));
        wall.setToY(Length.ofInches(toY));
        wall.setHeight(Length.ofInches(96));
        wall.setUnitType(unit);
        storey.getWalls().add(wall);
        return wall;
    }

    /** Offset and width in inches. */
    public static Opening door(Wall wall, String mark, long offset, long width) {
        Opening opening = BuildingFactory.eINSTANCE.createOpening();
        opening.setMark(mark);
        opening.setKind(OpeningKind.DOOR);
        opening.setOffset(Length.ofInches(offset));
        opening.setWidth(Length.ofInches(width));
        opening.setHeight(Length.ofInches(80));
        wall.getOpenings().add(opening);
        return opening;
    }

    public Wall wall(String mark) {
        return storey.getWalls().stream().filter(wall -> wall.getMark().equals(mark)).findFirst().orElseThrow();
    }

    public StoreyShape shape() {
        return StoreyShape.of(storey, project);
    }

    public WallShape shape(String mark) {
        return shape().wall(wall(mark)).orElseThrow();
    }

    /** A point in inches. */
    public static PlanPoint at(long x, long y) {
        return new PlanPoint(Length.ofInches(x), Length.ofInches(y));
    }
}
