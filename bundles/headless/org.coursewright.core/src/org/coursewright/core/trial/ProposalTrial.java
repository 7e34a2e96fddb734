package org.coursewright.core.trial;

import java.util.Collection;
import java.util.List;
import java.util.Optional;

import org.coursewright.bond.BondResult;
import org.coursewright.core.bond.LayoutResults;
import org.coursewright.core.cost.PriceOutcome;
import org.coursewright.core.cost.PriceResults;
import org.coursewright.core.derive.DerivationGraph;
import org.coursewright.core.proposal.AcceptProposalsCommand;
import org.coursewright.measure.Money;
import org.coursewright.measure.Progress;
import org.coursewright.model.edit.command.ProjectCommand;
import org.coursewright.model.project.Project;
import org.coursewright.model.proposal.Proposal;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * What becomes of the building if some of its proposals are accepted: the same results as the project has once they are. Works
 * on a copy of the project, made on the editing thread by the constructor; {@link #lay} may be called from any thread, for
 * one question after another, until it is closed.
 */
public final class ProposalTrial {

    private final EcoreUtil.Copier copies = new EcoreUtil.Copier();
    private final DerivationGraph results;
    private Optional<Count> asItIs = Optional.empty();

    /**
     * What the whole building takes.
     *
     * @param open runs that nothing fills
     * @param laps short laps
     * @param cuts cut pieces
     * @param price of all lines that have a rate, empty if none has
     * @param complete whether all lines have one
     */
    public record Count(long open, int laps, int cuts, Optional<Money> price, boolean complete) {

        private static Count of(BondResult result, PriceOutcome price) {
            boolean any = price.lines().stream().anyMatch(line -> line.priced().isPresent());
            return new Count(result.walls().stream().mapToLong(wall -> wall.unfillable().size()).sum(),
                    result.lapViolations(), result.cutPieces(),
                    any ? Optional.of(price.total().total()) : Optional.empty(), price.isComplete());
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

    /** @param project with proposals, read on its editing thread; it is not changed */
    public ProposalTrial(Project project) {
        results = new DerivationGraph((Project) copies.copy(project));
        copies.copyReferences();
    }

    /**
     * Lays and prices the building as it is, if it has not been yet, and with the changes made.
     *
     * @param proposals of the project, at least one
     * @param progress hears how far the work is and may cancel it
     * @return what accepting changes; nothing if the proposals cannot be accepted
     * @throws java.util.concurrent.CancellationException if cancelled
     * @throws org.coursewright.core.derive.DerivationException if the building cannot be laid or priced
     */
    public synchronized Effect lay(Collection<Proposal> proposals, Progress progress) {
        Count before = asItIs.orElseGet(() -> count(new Part(progress, 0, 0.5)));
        asItIs = Optional.of(before);
        List<Proposal> copied = proposals.stream().map(each -> (Proposal) copies.get(each)).toList();
        ProjectCommand accept = new AcceptProposalsCommand(copied);
        if (!accept.canExecute()) {
            return new Effect(before, before);
        }
        accept.execute();
        try {
            return new Effect(before, count(new Part(progress, 0.5, 1)));
        } finally {
            accept.undo();
        }
    }

    private Count count(Progress progress) {
        BondResult result = results.get(LayoutResults.LAYOUT, progress).result();
        return Count.of(result, results.get(PriceResults.PRICE, new Part(progress, 1, 1)));
    }

    /** Nothing will be asked any more; what is being laid is cancelled by its progress. */
    public void end() {
        results.close();
    }

    /** A share of the work. */
    private record Part(Progress whole, double from, double to) implements Progress {

        @Override
        public void done(double fraction) {
            whole.done(from + fraction * (to - from));
        }

        @Override
        public boolean isCancelled() {
            return whole.isCancelled();
        }
    }
}
