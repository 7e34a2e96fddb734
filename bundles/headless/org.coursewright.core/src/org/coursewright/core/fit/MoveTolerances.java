package org.coursewright.core.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.coursewright.bond.advice.Adjustable;
import org.coursewright.bond.advice.Dimension;
import org.coursewright.bond.advice.WallMove;
import org.coursewright.core.bond.BondTranslator;
import org.coursewright.core.bond.Translation;
import org.coursewright.measure.Length;
import org.coursewright.measure.Progress;
import org.coursewright.model.building.Wall;
import org.coursewright.model.project.Project;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Reads which walls of a project may move sideways, and what comes of it: each place is tried on a copy of the project. */
final class MoveTolerances {

    /** Of the copy, whose elements findings name otherwise than those of the project. */
    private final Translation planned;
    private final ProjectWalls walls;
    private final Project copy;
    private final Length step;

    /** @param step between places */
    MoveTolerances(Project project, Length step) {
        this.step = step;
        walls = new ProjectWalls(project);
        copy = EcoreUtil.copy(project);
        planned = BondTranslator.translate(copy);
    }

    List<WallMove> moves(FitSettings settings, Progress progress) {
        List<WallMove> moves = new ArrayList<>();
        planned.request().walls().stream().map(face -> walls.wall(face.mark()))
                .filter(wall -> settings.wall().isEmpty() || settings.wall().get().equals(wall.getMark()))
                .filter(wall -> wall.getMoveTolerance().signum() > 0)
                .forEach(wall -> move(wall, progress).ifPresent(moves::add));
        return moves;
    }

    private Optional<WallMove> move(Wall wall, Progress progress) {
        Length reach = wall.getMoveTolerance();
        Wall moved = new ProjectWalls(copy).wall(wall.getMark());
        Optional<SidewaysMove> move = SidewaysMove.of(moved);
        if (move.isEmpty()) {
            return Optional.empty();
        }
        List<WallMove.Place> places = new ArrayList<>();
        for (long steps = -(reach.units() / step.units()); steps <= reach.units() / step.units(); steps++) {
            progress.checkCancelled();
            Length change = step.times(steps);
            if (steps != 0) {
                new TriedMove(copy, planned).place(move.get(), change).ifPresent(places::add);
            }
        }
        return Optional.of(new WallMove(
                Adjustable.within(wall.getMark(), Optional.empty(), Dimension.OFFSET, reach), move.get().offset(),
                places));
    }
}
