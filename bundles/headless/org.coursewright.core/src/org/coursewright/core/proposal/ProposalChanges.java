package org.coursewright.core.proposal;

import java.util.List;
import java.util.Optional;

import org.coursewright.bond.WallFace;
import org.coursewright.core.bond.BondTranslator;
import org.coursewright.core.fit.LengthChange;
import org.coursewright.core.fit.SidewaysMove;
import org.coursewright.measure.Length;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;
import org.coursewright.model.edit.command.MoveOpeningCommand;
import org.coursewright.model.edit.command.ProjectCommand;
import org.coursewright.model.edit.command.ResizeOpeningCommand;
import org.coursewright.model.project.Project;
import org.coursewright.model.proposal.Proposal;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * What a proposal changes in the project that it is part of.
 *
 * @param proposal of a project
 */
public record ProposalChanges(Proposal proposal) {

    /** @return the dimension as it is now, empty if its wall or opening is not there or the wall cannot be laid */
    public Optional<Length> now() {
        if (proposal.getWall() == null) {
            return Optional.empty();
        }
        return switch (proposal.getDimension()) {
            case OFFSET -> opening().map(Opening::getOffset).or(() -> sideways().map(SidewaysMove::offset));
            case WIDTH -> opening().map(Opening::getWidth);
            case LENGTH -> face().map(WallFace::length);
        };
    }

    /** @return whether the dimension is still as it was when the change was proposed */
    public boolean isTimely() {
        return now().filter(length -> length.equals(proposal.getFrom())).isPresent();
    }

    /** @return undoable commands to execute in order, none if the dimension is not there */
    List<ProjectCommand> commands() {
        return switch (proposal.getDimension()) {
            case OFFSET -> opening().<ProjectCommand>map(each -> new MoveOpeningCommand(each, proposal.getTo()))
                    .or(() -> sideways().map(move -> move.command(proposal.getTo().minus(move.offset())))).stream()
                    .toList();
            case WIDTH -> opening()
                    .<ProjectCommand>map(each -> new ResizeOpeningCommand(each, proposal.getTo(), each.getHeight()))
                    .stream().toList();
            case LENGTH -> face().map(face -> new LengthChange(proposal.getWall(), face)
                    .commands(proposal.getTo().minus(face.length()))).orElse(List.of());
        };
    }

    private Optional<Opening> opening() {
        return Optional.ofNullable(proposal.getOpening());
    }

    /**
     * How the wall moves if it is the wall that is to: it stands where it stood when that was proposed, or where it is to go.
     * Otherwise the proposal may have been about an opening that is gone.
     */
    private Optional<SidewaysMove> sideways() {
        return Optional.of(proposal).filter(each -> each.getOpening() == null).map(Proposal::getWall)
                .flatMap(SidewaysMove::of).filter(move -> move.offset().equals(proposal.getFrom())
                        || move.offset().equals(proposal.getTo()));
    }

    private Optional<WallFace> face() {
        Wall wall = proposal.getWall();
        return BondTranslator.translate((Project) EcoreUtil.getRootContainer(proposal)).request().walls().stream()
                .filter(face -> face.mark().equals(wall.getMark())).findFirst();
    }
}
