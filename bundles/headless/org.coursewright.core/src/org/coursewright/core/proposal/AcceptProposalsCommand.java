package org.coursewright.core.proposal;

import java.util.List;
import java.util.Optional;

import org.coursewright.model.building.Opening;
import org.coursewright.model.edit.ElementLabels;
import org.coursewright.model.edit.Refusal;
import org.coursewright.model.edit.command.ProjectCommand;
import org.coursewright.model.proposal.Proposal;
import org.coursewright.model.proposal.ProposalState;
import org.eclipse.emf.ecore.EObject;

/** Changes the project's dimensions as proposed, and notes the proposals as accepted, in one step of the history. */
public final class AcceptProposalsCommand extends ProjectCommand {

    private final List<Proposal> proposals;

    /** @param proposals of a project, at least one, in the order they were offered in */
    public AcceptProposalsCommand(List<? extends Proposal> proposals) {
        super(proposals.get(0), ElementLabels.of(proposals));
        this.proposals = List.copyOf(proposals);
    }

    @Override
    protected Optional<Refusal> findRefusal() {
        return proposals.stream().map(this::refusal).flatMap(Optional::stream).findFirst();
    }

    private Optional<Refusal> refusal(Proposal proposal) {
        if (!isInProject(proposal) || proposal.getTo() == null || new ProposalChanges(proposal).now().isEmpty()) {
            return Optional.of(Refusal.of("notThere", ElementLabels.of(proposal)));
        }
        return new ProposalChanges(proposal).commands().stream().map(ProjectCommand::refusal)
                .flatMap(Optional::stream).findFirst();
    }

    @Override
    protected boolean changesAnything() {
        return proposals.stream().anyMatch(each -> each.getState() != ProposalState.ACCEPTED);
    }

    @Override
    protected void apply() {
        for (Proposal proposal : proposals) {
            new ProposalChanges(proposal).commands().stream().filter(ProjectCommand::canExecute)
                    .forEach(ProjectCommand::execute);
            proposal.setState(ProposalState.ACCEPTED);
        }
    }

    @Override
    protected List<EObject> affected() {
        return proposals.stream().map(AcceptProposalsCommand::changed).distinct().toList();
    }

    private static EObject changed(Proposal proposal) {
        Opening opening = proposal.getOpening();
        return opening != null ? opening : proposal.getWall() != null ? proposal.getWall() : proposal;
    }
}
