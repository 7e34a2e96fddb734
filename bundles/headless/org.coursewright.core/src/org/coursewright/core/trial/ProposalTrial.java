package org.coursewright.core.trial;

import java.util.Collection;
import java.util.List;

import org.coursewright.bond.BondResult;
import org.coursewright.bond.BondSolver;
import org.coursewright.core.bond.BondTranslator;
import org.coursewright.core.bond.BuildingLayout;
import org.coursewright.core.proposal.AcceptProposalsCommand;
import org.coursewright.measure.Progress;
import org.coursewright.model.edit.command.ProjectCommand;
import org.coursewright.model.project.Project;
import org.coursewright.model.proposal.Proposal;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * What becomes of the building if some proposals are accepted. Works on a copy of the project, made on the editing thread by
 * the constructor; {@link #lay} may be called from any thread, once.
 */
public final class ProposalTrial {

    private final Project copy;
    private final List<Proposal> proposals;

    /**
     * Short laps and cut pieces of the whole building.
     *
     * @param laps short laps
     * @param cuts cut pieces
     */
    public record Count(int laps, int cuts) {

        static Count of(BondResult result) {
            return new Count(result.lapViolations(), result.cutPieces());
        }
    }

    /**
     * What accepting changes.
     *
     * @param before the building as it is
     * @param after the building with the changes made
     */
    public record Effect(Count before, Count after) {
    }

    /** @param proposals of one project, at least one */
    public ProposalTrial(Collection<Proposal> proposals) {
        EcoreUtil.Copier copier = new EcoreUtil.Copier();
        copy = (Project) copier.copy(EcoreUtil.getRootContainer(proposals.iterator().next()));
        copier.copyReferences();
        this.proposals = proposals.stream().map(each -> (Proposal) copier.get(each)).toList();
    }

    /**
     * Lays the building before and after, both soon, so that they can be compared.
     *
     * @param progress may cancel it
     * @return what accepting changes; nothing if the proposals cannot be accepted
     * @throws java.util.concurrent.CancellationException if cancelled
     */
    public Effect lay(Progress progress) {
        BuildingLayout layout = new BuildingLayout(BondSolver.remembering());
        Count before = Count.of(layout.first(BondTranslator.translate(copy), progress).result());
        ProjectCommand accept = new AcceptProposalsCommand(proposals);
        if (!accept.canExecute()) {
            return new Effect(before, before);
        }
        accept.execute();
        return new Effect(before, Count.of(layout.first(BondTranslator.translate(copy), progress).result()));
    }
}
