package org.coursewright.layout.ui.proposal;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;

import org.coursewright.bond.advice.BondAdvisor;
import org.coursewright.core.bond.LayoutResults;
import org.coursewright.core.fit.FitOutcome;
import org.coursewright.core.proposal.ProposalDrafts;
import org.coursewright.core.session.ProjectSession;
import org.coursewright.model.edit.command.OfferProposalsCommand;
import org.coursewright.model.proposal.Proposal;
import org.coursewright.workbench.OpenProjects;
import org.eclipse.osgi.util.NLS;

/** Looks for proposals in one project at a time, and puts those that are found into it if it is still open then. */
final class ProposalFinding implements ProposalSearch.Listener {

    private final OpenProjects projects;
    private final Executor display;
    private final Told told;
    private Optional<ProposalSearch> search = Optional.empty();
    private Optional<ProjectSession> searched = Optional.empty();

    /** Who is told in the user interface thread. */
    interface Told {
        /** @param percent of the work that is done */
        void looking(int percent);

        /** @param words about what came of it, empty if it can be seen */
        void ended(String words);

        /** Somebody has given it up. */
        void givenUp();
    }

    /**
     * @param projects that are open
     * @param display runs what is told in the user interface thread
     * @param told how far it is, and what came of it
     */
    ProposalFinding(OpenProjects projects, Executor display, Told told) {
        this.projects = projects;
        this.display = display;
        this.told = told;
    }

    /** Begins to look. */
    void in(ProjectSession session) {
        searched = Optional.of(session);
        BondAdvisor advisor = session.derived().get(LayoutResults.ADVISOR);
        search = Optional.of(new ProposalSearch(session.project(), advisor, display, this));
        search.get().schedule();
        progressed(0);
    }

    boolean isGoingOn() {
        return search.isPresent();
    }

    /** Gives up, if it is going on. */
    void cancel() {
        search.ifPresent(ProposalSearch::cancel);
    }

    @Override
    public void progressed(int percent) {
        if (isGoingOn()) {
            told.looking(percent);
        }
    }

    @Override
    public void found(FitOutcome outcome) {
        search = Optional.empty();
        told.ended(outcome.proposals().isEmpty() ? ProposalText.nothingFound : "");
        searched.filter(projects.sessions()::contains).ifPresent(session -> offer(session, outcome));
    }

    private static void offer(ProjectSession session, FitOutcome outcome) {
        List<Proposal> drafts = new ProposalDrafts(session.project()).of(outcome, "",
                Instant.now().truncatedTo(ChronoUnit.SECONDS));
        OfferProposalsCommand offer = new OfferProposalsCommand(session.project(), drafts);
        if (offer.canExecute()) {
            session.execute(offer);
        }
    }

    @Override
    public void failed(String reason) {
        search = Optional.empty();
        told.ended(NLS.bind(ProposalText.failed, reason));
    }

    @Override
    public void cancelled() {
        search = Optional.empty();
        told.givenUp();
    }
}
