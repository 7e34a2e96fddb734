package org.coursewright.layout.ui.proposal;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;

import org.coursewright.bond.advice.BondAdvisor;
import org.coursewright.core.fit.FitOutcome;
import org.coursewright.core.fit.FitSettings;
import org.coursewright.core.fit.ProjectFit;
import org.coursewright.measure.Length;
import org.coursewright.measure.Progress;
import org.coursewright.model.project.Project;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Looks in the background, on a copy of the project, for changes that spare cuts. */
final class ProposalSearch extends Job {

    private static final FitSettings ALL_WALLS = new FitSettings(Optional.empty(), Optional.empty(), Length.ZERO,
            Optional.empty());

    private final Project copy;
    private final BondAdvisor advisor;
    private final Executor display;
    private final Listener listener;
    private volatile boolean cancelled;

    /** Is told in the user interface thread. */
    interface Listener {

        /** @param percent of the work done */
        void progressed(int percent);

        /** @param outcome what was found */
        void found(FitOutcome outcome);

        /** @param reason why nothing can be found */
        void failed(String reason);

        /** The search was cancelled. */
        void cancelled();
    }

    /**
     * Reads the project; to be made in the user interface thread.
     *
     * @param project to look at
     * @param advisor to ask
     * @param display runs what is told in the user interface thread
     * @param listener told there
     */
    ProposalSearch(Project project, BondAdvisor advisor, Executor display, Listener listener) {
        super(ProposalText.job);
        this.copy = EcoreUtil.copy(project);
        this.advisor = advisor;
        this.display = display;
        this.listener = listener;
    }

    @Override
    protected void canceling() {
        cancelled = true;
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        try {
            FitOutcome outcome = new ProjectFit(advisor).advise(copy, ALL_WALLS, new Told());
            display.execute(() -> listener.found(outcome));
        } catch (CancellationException e) {
            display.execute(listener::cancelled);
            return new Status(IStatus.CANCEL, ProposalSearch.class, e.getMessage());
        } catch (IllegalArgumentException | IllegalStateException e) {
            display.execute(() -> listener.failed(e.getMessage()));
        }
        return Status.OK_STATUS;
    }

    /** Tells the listener each whole percent. */
    private final class Told implements Progress {

        private int percent = -1;

        @Override
        public void done(double fraction) {
            int now = (int) (fraction * 100);
            if (now != percent) {
                percent = now;
                display.execute(() -> listener.progressed(now));
            }
        }

        @Override
        public boolean isCancelled() {
            return cancelled;
        }
    }
}
