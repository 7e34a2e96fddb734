package org.coursewright.core.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import org.coursewright.bond.WallEnd;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.advice.Advice;
import org.coursewright.bond.advice.Proposal;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;
import org.coursewright.model.building.WallPlace;
import org.coursewright.model.edit.command.MoveOpeningCommand;
import org.coursewright.model.edit.command.MoveWallEndCommand;
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
     * @return undoable commands to execute in order, at least one
     * @throws IllegalArgumentException if its wall or opening is not in the project any more
     */
    public List<ProjectCommand> commands(Advice advice, Proposal proposal) {
        String wall = proposal.adjustable().wall();
        return proposal.adjustable().opening()
                .map(mark -> List.of(command(walls.opening(wall, mark), proposal)))
                .orElseGet(() -> lengthen(walls.wall(wall), face(advice, wall), proposal));
    }

    private static ProjectCommand command(Opening opening, Proposal proposal) {
        return switch (proposal.adjustable().dimension()) {
            case OFFSET -> new MoveOpeningCommand(opening, proposal.to());
            case WIDTH -> new ResizeOpeningCommand(opening, proposal.to(), opening.getHeight());
            case LENGTH -> throw new IllegalArgumentException("An opening has no length.");
        };
    }

    private static WallFace face(Advice advice, String mark) {
        return advice.changed().walls().stream().filter(face -> face.mark().equals(mark)).findFirst().orElseThrow();
    }

    /** The end moves if it is free, else the start; then openings, measured from it, keep their place. */
    private static List<ProjectCommand> lengthen(Wall wall, WallFace face, Proposal proposal) {
        Length change = proposal.to().minus(proposal.from());
        long alongX = Long.signum(wall.getToX().minus(wall.getFromX()).units());
        long alongY = Long.signum(wall.getToY().minus(wall.getFromY()).units());
        if (face.end() instanceof WallEnd.Free) {
            return List.of(new MoveWallEndCommand(wall, WallPlace.END, wall.getToX().plus(change.times(alongX)),
                    wall.getToY().plus(change.times(alongY))));
        }
        List<ProjectCommand> commands = new ArrayList<>();
        commands.add(new MoveWallEndCommand(wall, WallPlace.START, wall.getFromX().minus(change.times(alongX)),
                wall.getFromY().minus(change.times(alongY))));
        wall.getOpenings().forEach(
                opening -> commands.add(new MoveOpeningCommand(opening, opening.getOffset().plus(change))));
        return commands;
    }
}
