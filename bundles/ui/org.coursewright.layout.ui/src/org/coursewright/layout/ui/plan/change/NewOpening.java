package org.coursewright.layout.ui.plan.change;

import java.util.Optional;
import java.util.stream.Stream;

import org.coursewright.layout.ui.plan.shape.WallShape;
import org.coursewright.measure.Length;
import org.coursewright.model.building.BuildingFactory;
import org.coursewright.model.building.BuildingPackage;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.OpeningKind;
import org.coursewright.model.edit.Marks;
import org.coursewright.model.project.Project;

/**
 * Makes openings that are like the last one of their kind in the building, or as large as doors and windows usually are.
 *
 * @param project that they are made for
 * @param kind of them
 */
public record NewOpening(Project project, OpeningKind kind) {

    /** Sizes of the first door and window of a building (common practice, no source). */
    private static final Length DOOR_WIDTH = Length.ofInches(36);
    private static final Length DOOR_HEIGHT = Length.ofInches(80);
    private static final Length WINDOW_WIDTH = Length.ofInches(48);
    private static final Length WINDOW_HEIGHT = Length.ofInches(44);
    private static final Length WINDOW_SILL = Length.ofInches(36);
    private static final String DOOR_PREFIX = "D";
    private static final String OTHER_PREFIX = "N";

    /**
     * @param wall that it is for
     * @return an opening in no wall yet, at the outer start face
     */
    public Opening in(WallShape wall) {
        Opening opening = BuildingFactory.eINSTANCE.createOpening();
        opening.setKind(kind);
        opening.setMark(Marks.free(BuildingPackage.Literals.OPENING, project, prefix()));
        last().ifPresentOrElse(like -> copy(like, opening), () -> first(wall, opening));
        return opening;
    }

    private static void copy(Opening like, Opening opening) {
        opening.setWidth(like.getWidth());
        opening.setHeight(like.getHeight());
        opening.setSill(like.getSill());
        opening.setLintelType(like.getLintelType());
        opening.setMoveTolerance(like.getMoveTolerance());
        opening.setSizeTolerance(like.getSizeTolerance());
    }

    private void first(WallShape wall, Opening opening) {
        boolean door = kind == OpeningKind.DOOR;
        opening.setWidth(wall.module().opening(door ? DOOR_WIDTH : WINDOW_WIDTH));
        opening.setHeight(door ? DOOR_HEIGHT : WINDOW_HEIGHT);
        opening.setSill(door ? Length.ZERO : WINDOW_SILL);
    }

    private String prefix() {
        return last().map(Opening::getMark).map(mark -> mark.replaceAll("\\d+$", "")).filter(text -> !text.isBlank())
                .orElse(kind == OpeningKind.DOOR ? DOOR_PREFIX : OTHER_PREFIX);
    }

    private Optional<Opening> last() {
        return openings().filter(opening -> opening.getKind() == kind && opening.getWidth().signum() > 0)
                .reduce((one, next) -> next);
    }

    private Stream<Opening> openings() {
        return project.getBuilding().getStoreys().stream().flatMap(storey -> storey.getWalls().stream())
                .flatMap(wall -> wall.getOpenings().stream());
    }
}
