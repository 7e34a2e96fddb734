package org.coursewright.layout.ui.trial;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicInteger;

import org.coursewright.core.derive.DerivationException;
import org.coursewright.core.trial.ProposalTrial;
import org.coursewright.core.trial.ProposalTrial.Effect;
import org.coursewright.measure.Progress;
import org.coursewright.model.project.Project;
import org.coursewright.model.proposal.Proposal;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Finds in the background what accepting the proposals would change that were asked about last. The building as it is is laid
 * once until the project changes.
 */
public final class EffectTrial {

    private final Executor display;
    private final Listener listener;
    private final NewestJob<Optional<Question>> job = new NewestJob<>(TrialText.effectJob,
            (question, ending, overtaken) -> question.ifPresent(each -> lay(each, overtaken)));
    private Optional<ProposalTrial> trial = Optional.empty();
    private Optional<Question> asked = Optional.empty();

    /** Is told in the user interface thread, of what was asked last only. */
    public interface Listener {

        /** @param percent of the work done */
        void progressed(int percent);

        /** @param effect of accepting */
        void found(Effect effect);

        /** @param reason why nobody can tell */
        void failed(String reason);
    }

    private record Question(ProposalTrial trial, List<Proposal> proposals) {
    }

    /**
     * @param display runs what is told in the user interface thread
     * @param listener told there
     */
    public EffectTrial(Executor display, Listener listener) {
        this.display = display;
        this.listener = listener;
    }

    /**
     * Reads the project; to be called in the user interface thread.
     *
     * @param proposals of one project; none to ask about nothing
     */
    public void ask(List<Proposal> proposals) {
        asked = proposals.isEmpty() ? Optional.empty() : Optional.of(new Question(trialOf(proposals), proposals));
        job.ask(asked);
    }

    private ProposalTrial trialOf(List<Proposal> proposals) {
        ProposalTrial found = trial.orElseGet(
                () -> new ProposalTrial((Project) EcoreUtil.getRootContainer(proposals.get(0))));
        trial = Optional.of(found);
        return found;
    }

    /** The project has changed, or another one is asked about: what was asked is of the past. */
    public void forget() {
        asked = Optional.empty();
        job.ask(asked);
        trial.ifPresent(ProposalTrial::end);
        trial = Optional.empty();
    }

    /** Ends the work; what is already on its way is ignored. */
    public void end() {
        forget();
        job.end();
    }

    private void lay(Question question, Progress overtaken) {
        try {
            Effect effect = question.trial().lay(question.proposals(), new Told(question, overtaken));
            tell(question, () -> listener.found(effect));
        } catch (DerivationException e) {
            tell(question, () -> listener.failed(e.getMessage()));
        }
    }

    private void tell(Question question, Runnable what) {
        display.execute(() -> {
            if (asked.filter(each -> each == question).isPresent()) {
                what.run();
            }
        });
    }

    /** Tells the listener each whole percent. */
    private final class Told implements Progress {

        private final Question question;
        private final Progress overtaken;
        private final AtomicInteger percent = new AtomicInteger();

        Told(Question question, Progress overtaken) {
            this.question = question;
            this.overtaken = overtaken;
        }

        @Override
        public void done(double fraction) {
            int now = (int) (fraction * 100);
            if (percent.getAndSet(now) != now) {
                tell(question, () -> listener.progressed(now));
            }
        }

        @Override
        public boolean isCancelled() {
            return overtaken.isCancelled();
        }
    }
}
