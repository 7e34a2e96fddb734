package org.coursewright.layout.ui.plan.change;

import java.util.Optional;

import org.coursewright.core.display.ProjectFormat;
import org.coursewright.layout.ui.plan.shape.PlanPoint;
import org.coursewright.layout.ui.plan.shape.WallModule;
import org.coursewright.measure.DisplayUnit;
import org.coursewright.measure.Length;
import org.coursewright.model.building.BuildingFactory;
import org.coursewright.model.building.BuildingPackage;
import org.coursewright.model.building.Storey;
import org.coursewright.model.building.Wall;
import org.coursewright.model.edit.Marks;
import org.coursewright.model.project.Project;

/**
 * Makes walls that are like the last one of their storey, or of the first unit type there is.
 *
 * @param project whose catalogue is used
 * @param storey that they are made for
 */
public record NewWall(Project project, Storey storey) {

    /** Height of the first wall of a storey (common practice, no source). */
    private static final Length USUAL_INCHES = Length.ofInches(96);
    private static final Length USUAL_MILLIMETRES = Length.ofMillimetres(2400);
    private static final String PREFIX = "W";

    /**
     * @param from start of its centre line
     * @param to end of its centre line
     * @return a wall in no project yet
     */
    public Wall between(PlanPoint from, PlanPoint to) {
        Wall wall = BuildingFactory.eINSTANCE.createWall();
        wall.setMark(Marks.free(BuildingPackage.Literals.WALL, project, PREFIX));
        wall.setFromX(from.x());
        wall.setFromY(from.y());
        wall.setToX(to.x());
        wall.setToY(to.y());
        last().ifPresentOrElse(like -> copy(like, wall), () -> first(wall));
        return wall;
    }

    private Optional<Wall> last() {
        return storey.getWalls().stream().filter(wall -> wall.getUnitType() != null).reduce((one, next) -> next);
    }

    private static void copy(Wall like, Wall wall) {
        wall.setUnitType(like.getUnitType());
        wall.setBond(like.getBond());
        wall.setBase(like.getBase());
        wall.setHeight(like.getHeight());
    }

    private void first(Wall wall) {
        if (project.getCatalogue() != null) {
            project.getCatalogue().getUnitTypes().stream().findFirst().ifPresent(wall::setUnitType);
        }
        wall.setHeight(ProjectFormat.of(project).unit() == DisplayUnit.MILLIMETRE
                ? USUAL_MILLIMETRES
                : USUAL_INCHES);
    }

    /** @return what the next wall will be stepped by */
    public WallModule module() {
        return WallModule.of(between(PlanPoint.ORIGIN, PlanPoint.ORIGIN), project);
    }
}
