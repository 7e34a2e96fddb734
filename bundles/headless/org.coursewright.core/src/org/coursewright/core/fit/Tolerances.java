package org.coursewright.core.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.coursewright.bond.WallEnd;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.advice.Adjustable;
import org.coursewright.bond.advice.Dimension;
import org.coursewright.core.bond.Translation;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;
import org.coursewright.model.project.Project;

/** Reads which dimensions of a project may change, and how far. */
final class Tolerances {

    private final ProjectWalls walls;
    private final Translation translation;
    private final FitSettings settings;
    private final List<Adjustable> adjustables = new ArrayList<>();

    Tolerances(Project project, Translation translation, FitSettings settings) {
        this.walls = new ProjectWalls(project);
        this.translation = translation;
        this.settings = settings;
    }

    List<Adjustable> adjustables() {
        translation.request().walls().stream()
                .filter(face -> settings.wall().isEmpty() || settings.wall().get().equals(face.mark()))
                .forEach(face -> add(face, walls.wall(face.mark())));
        return List.copyOf(adjustables);
    }

    private void add(WallFace face, Wall wall) {
        wall.getOpenings().forEach(opening -> add(face.mark(), opening));
        Length size = wall.getSizeTolerance().signum() > 0 ? wall.getSizeTolerance() : settings.wallTolerance();
        if (size.signum() > 0 && isExtendable(face, wall)) {
            adjustables.add(Adjustable.within(face.mark(), Optional.empty(), Dimension.LENGTH, size));
        }
    }

    private void add(String wall, Opening opening) {
        if (opening.getMoveTolerance().signum() > 0) {
            add(wall, opening, Dimension.OFFSET, opening.getMoveTolerance());
        }
        if (opening.getSizeTolerance().signum() > 0) {
            add(wall, opening, Dimension.WIDTH, opening.getSizeTolerance());
        }
    }

    private void add(String wall, Opening opening, Dimension dimension, Length tolerance) {
        adjustables.add(Adjustable.within(wall, Optional.of(opening.getMark()), dimension, tolerance));
    }

    /** Only along an axis do all lengths of a wall lead to an end on a point of the grid. */
    private static boolean isExtendable(WallFace face, Wall wall) {
        boolean free = face.end() instanceof WallEnd.Free || face.start() instanceof WallEnd.Free;
        return free && (wall.getFromX().equals(wall.getToX()) || wall.getFromY().equals(wall.getToY()));
    }
}
