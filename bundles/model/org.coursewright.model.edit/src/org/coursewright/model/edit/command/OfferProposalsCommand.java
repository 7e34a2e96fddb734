package org.coursewright.model.edit.command;

import java.util.List;
import java.util.Optional;

import org.coursewright.model.edit.ElementLabels;
import org.coursewright.model.edit.Refusal;
import org.coursewright.model.project.Project;
import org.coursewright.model.proposal.Proposal;
import org.coursewright.model.proposal.ProposalState;
import org.eclipse.emf.ecore.EObject;

/** Puts changes of dimension before the architect; those offered before and not answered are withdrawn. */
public final class OfferProposalsCommand extends ProjectCommand {

    private final Project project;
    private final List<Proposal> offered;

    /**
     * @param project to put them into
     * @param offered with their values, in no project yet
     */
    public OfferProposalsCommand(Project project, List<? extends Proposal> offered) {
        super(project, offered.isEmpty() ? "" : ElementLabels.of(offered));
        this.project = project;
        this.offered = List.copyOf(offered);
    }

    @Override
    protected Optional<Refusal> findRefusal() {
        return offered.stream().filter(each -> each.eContainer() != null).findFirst()
                .map(each -> Refusal.of("present", ElementLabels.of(each)))
                .or(() -> offered.stream().filter(each -> each.getWall() == null || !isInProject(each.getWall()))
                        .findFirst().map(each -> Refusal.of("notThere", ElementLabels.of(each))));
    }

    @Override
    protected boolean changesAnything() {
        return !offered.isEmpty();
    }

    @Override
    protected void apply() {
        project.getProposals().stream().filter(each -> each.getState() == ProposalState.OPEN)
                .forEach(each -> each.setState(ProposalState.WITHDRAWN));
        project.getProposals().addAll(offered);
    }

    @Override
    protected List<EObject> affected() {
        return List.copyOf(offered);
    }
}
