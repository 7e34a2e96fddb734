package org.coursewright.model.edit.command;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.coursewright.model.edit.EditTexts;
import org.coursewright.model.edit.ElementLabels;
import org.coursewright.model.edit.Refusal;
import org.coursewright.model.proposal.Proposal;
import org.coursewright.model.proposal.ProposalState;
import org.eclipse.emf.ecore.EObject;

/** Notes what became of proposals. Changing the dimensions of those accepted is an edit of its own. */
public final class AnswerProposalsCommand extends ProjectCommand {

    private final List<Proposal> proposals;
    private final ProposalState state;

    /**
     * @param proposals of a project, at least one
     * @param state what becomes of them
     */
    public AnswerProposalsCommand(List<? extends Proposal> proposals, ProposalState state) {
        super(proposals.get(0));
        this.proposals = List.copyOf(proposals);
        this.state = Objects.requireNonNull(state, "state");
    }

    @Override
    public String getLabel() {
        return EditTexts.of("command.AnswerProposalsCommand." + state.name(), ElementLabels.of(proposals));
    }

    @Override
    protected Optional<Refusal> findRefusal() {
        return proposals.stream().filter(each -> !isInProject(each)).findFirst()
                .map(each -> Refusal.of("notThere", ElementLabels.of(each)));
    }

    @Override
    protected boolean changesAnything() {
        return proposals.stream().anyMatch(each -> each.getState() != state);
    }

    @Override
    protected void apply() {
        proposals.forEach(each -> each.setState(state));
    }

    @Override
    protected List<EObject> affected() {
        return List.copyOf(proposals);
    }
}
