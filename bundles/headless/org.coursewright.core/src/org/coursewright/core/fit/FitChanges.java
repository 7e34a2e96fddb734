package org.coursewright.core.fit;

import java.util.List;
import java.util.Objects;

import org.coursewright.bond.WallFace;
import org.coursewright.bond.advice.Advice;
import org.coursewright.bond.advice.Dimension;
import org.coursewright.bond.advice.Proposal;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;
import org.coursewright.model.edit.command.MoveOpeningCommand;
import org.coursewright.model.edit.command.ProjectCommand;
import org.coursewright.model.edit.command.ResizeOpeningCommand;
import org.coursewright.model.project.Project;

/** Makes proposals in a project: the commands of each proposal, to be executed before those of the next are asked for. */
public final class FitChanges {

    private final ProjectWalls walls;

    /** @param project to change, not null */
    public FitChanges(Project project) {
        walls = new ProjectWalls(Objects.requireNonNull(project, "project"));
    }

    /**
     * The edits of one proposal, all earlier ones having been made.
     *
     * @param advice whose proposal it is
     * @param proposal one of its proposals
     * @return undoable commands to execute in order, at least one unless a wall that is to move cannot any more
     * @throws IllegalArgumentException if its wall or opening is not in the project any more
     */
    public List<ProjectCommand> commands(Advice advice, Proposal proposal) {
        String wall = proposal.adjustable().wall();
        return proposal.adjustable().opening()
                .map(mark -> List.of(command(walls.opening(wall, mark), proposal)))
                .orElseGet(() -> commands(walls.wall(wall), advice, proposal));
    }

    private static List<ProjectCommand> commands(Wall wall, Advice advice, Proposal proposal) {
        Length change = proposal.to().minus(proposal.from());
        return proposal.adjustable().dimension() == Dimension.OFFSET
                ? SidewaysMove.of(wall).map(move -> move.command(change)).stream().toList()
                : new LengthChange(wall, face(advice, wall.getMark())).commands(change);
    }

    private static ProjectCommand command(Opening opening, Proposal proposal) {
        return switch (proposal.adjustable().dimension()) {
            case OFFSET -> new MoveOpeningCommand(opening, proposal.to());
            case WIDTH -> new ResizeOpeningCommand(opening, proposal.to(), opening.getHeight());
            case NEAR_JAMB, LENGTH -> throw new IllegalArgumentException(
                    "%s of an opening is not proposed to change.".formatted(proposal.adjustable().dimension()));
        };
    }

    private static WallFace face(Advice advice, String mark) {
        return advice.changed().walls().stream().filter(face -> face.mark().equals(mark)).findFirst().orElseThrow();
    }
}
