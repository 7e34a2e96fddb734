package org.coursewright.layout.ui.trial;

import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

import org.coursewright.core.trial.ProposalTrial;
import org.coursewright.core.trial.ProposalTrial.Effect;
import org.coursewright.measure.Progress;
import org.coursewright.model.proposal.Proposal;

/** Finds in the background what accepting the proposals would change that were asked about last. */
public final class EffectTrial {

    private final Executor display;
    private final Consumer<Effect> tell;
    private final NewestJob<ProposalTrial> job = new NewestJob<>(TrialText.effectJob,
            (trial, ending, overtaken) -> lay(trial, overtaken));
    private boolean ended;

    /**
     * @param display runs what is told in the user interface thread
     * @param tell told there the effect of what was asked about last
     */
    public EffectTrial(Executor display, Consumer<Effect> tell) {
        this.display = display;
        this.tell = tell;
    }

    /**
     * Reads the project; to be called in the user interface thread.
     *
     * @param proposals of one project; none to ask about nothing
     */
    public void ask(List<Proposal> proposals) {
        if (!proposals.isEmpty()) {
            job.ask(new ProposalTrial(proposals));
        }
    }

    /** Ends the work; what is already on its way is ignored. */
    public void end() {
        ended = true;
        job.end();
    }

    private void lay(ProposalTrial trial, Progress overtaken) {
        Effect effect = trial.lay(overtaken);
        display.execute(() -> {
            if (!ended) {
                tell.accept(effect);
            }
        });
    }
}
