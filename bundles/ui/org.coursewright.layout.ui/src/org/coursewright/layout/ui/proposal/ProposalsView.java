package org.coursewright.layout.ui.proposal;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;

import org.coursewright.core.fit.FitOutcome;
import org.coursewright.core.proposal.AcceptProposalsCommand;
import org.coursewright.core.proposal.ProposalDrafts;
import org.coursewright.core.session.ProjectSession;
import org.coursewright.core.trial.ProposalTrial.Effect;
import org.coursewright.layout.ui.trial.EffectTrial;
import org.coursewright.model.edit.ElementLabels;
import org.coursewright.model.edit.command.AnswerProposalsCommand;
import org.coursewright.model.edit.command.OfferProposalsCommand;
import org.coursewright.model.edit.command.ProjectCommand;
import org.coursewright.model.edit.command.SetFeatureCommand;
import org.coursewright.model.proposal.Proposal;
import org.coursewright.model.proposal.ProposalPackage.Literals;
import org.coursewright.model.proposal.ProposalState;
import org.coursewright.workbench.OpenProjects;
import org.coursewright.workbench.OpenProjectsListener;
import org.coursewright.workbench.internal.project.ProjectActions;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.part.ViewPart;

/**
 * Lists changes of dimension that spare cuts. They are found in the background, kept in the project with the architect's
 * answers, and made in it when they are accepted. Before that, the view says what accepting those selected changes in the
 * whole building.
 */
public final class ProposalsView extends ViewPart implements OpenProjectsListener, ProposalSearch.Listener {

    /** Under which the view is registered. */
    public static final String ID = "org.coursewright.layout.ui.proposals";

    private OpenProjects projects;
    private ProjectActions actions;
    private ProposalsPanel panel;
    private EffectTrial effect;
    private String asked = "";
    private Optional<ProposalSearch> search = Optional.empty();
    private Optional<ProjectSession> searched = Optional.empty();
    private Optional<ProjectSession> shown = Optional.empty();

    @Override
    public void createPartControl(Composite parent) {
        projects = getSite().getService(OpenProjects.class);
        actions = new ProjectActions(getViewSite());
        panel = new ProposalsPanel(parent, new Chosen());
        effect = new EffectTrial(parent.getDisplay()::asyncExec, new Effects());
        projects.addListener(this);
        show();
    }

    /** What the panel's buttons do. */
    private final class Chosen implements ProposalsPanel.Choices {

        @Override
        public void find() {
            projects.active().ifPresent(ProposalsView.this::look);
        }

        @Override
        public void cancel() {
            search.ifPresent(ProposalSearch::cancel);
        }

        @Override
        public void answer(List<Proposal> proposals, ProposalState state) {
            execute(state == ProposalState.ACCEPTED
                    ? new AcceptProposalsCommand(proposals)
                    : new AnswerProposalsCommand(proposals, state));
            // the button that had the keys is of no use any more; undo by key must go on working
            panel.setFocus();
        }

        @Override
        public void comment(List<Proposal> proposals) {
            Proposal first = proposals.get(0);
            InputDialog dialog = new InputDialog(getSite().getShell(), ProposalText.commentTitle,
                    NLS.bind(ProposalText.commentAsk, ElementLabels.of(first)), first.getComment(), null);
            if (dialog.open() == Window.OK) {
                String words = dialog.getValue().isBlank() ? null : dialog.getValue().strip();
                execute(new SetFeatureCommand(first, Literals.PROPOSAL__COMMENT, words));
            }
        }

        @Override
        public void selected(List<Proposal> proposals) {
            weigh(proposals);
        }
    }

    /** Looks what accepting those would change that are not accepted yet. */
    private void weigh(List<Proposal> proposals) {
        List<Proposal> open = proposals.stream().filter(each -> each.getState() != ProposalState.ACCEPTED).toList();
        asked = ProposalsPanel.several(open);
        effect.ask(open);
        say(open.isEmpty() ? counted() : NLS.bind(ProposalText.effectComing, asked, 0));
    }

    /** What the view says of the proposals that are selected, unless others are being looked for. */
    private final class Effects implements EffectTrial.Listener {

        @Override
        public void progressed(int percent) {
            say(NLS.bind(ProposalText.effectComing, asked, percent));
        }

        @Override
        public void found(Effect found) {
            say(new EffectWords(found).of(asked));
        }

        @Override
        public void failed(String reason) {
            say(NLS.bind(ProposalText.effectFailed, reason));
        }
    }

    private void say(String words) {
        if (!panel.isDisposed() && search.isEmpty()) {
            panel.say(words);
        }
    }

    private void look(ProjectSession session) {
        searched = Optional.of(session);
        search = Optional.of(new ProposalSearch(session.project(), getSite().getShell().getDisplay()::asyncExec, this));
        search.get().schedule();
        progressed(0);
    }

    /** Makes an edit, or says why it cannot be made. */
    private void execute(ProjectCommand command) {
        command.refusal().ifPresent(refusal -> say(refusal.reason()));
        projects.active().filter(session -> command.canExecute()).ifPresent(session -> session.execute(command));
    }

    @Override
    public void progressed(int percent) {
        if (!panel.isDisposed() && search.isPresent()) {
            panel.searching(true);
            panel.say(NLS.bind(ProposalText.looking, percent));
        }
    }

    @Override
    public void found(FitOutcome outcome) {
        ended(outcome.proposals().isEmpty() ? ProposalText.nothingFound : "");
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
        ended(NLS.bind(ProposalText.failed, reason));
    }

    @Override
    public void cancelled() {
        ended(counted());
    }

    private void ended(String words) {
        search = Optional.empty();
        if (!panel.isDisposed()) {
            panel.searching(false);
            panel.say(words);
        }
    }

    @Override
    public void projectChanged(Change change, ProjectSession session) {
        if (change != Change.ACTIVATED || !shown.equals(projects.active())) {
            show();
        }
    }

    private void show() {
        shown = projects.active();
        effect.forget();
        panel.show(proposals(), shown.isPresent());
        weigh(panel.selection());
    }

    private List<Proposal> proposals() {
        return projects.active().map(session -> List.copyOf(session.project().getProposals())).orElse(List.of());
    }

    private String counted() {
        if (projects.active().isEmpty()) {
            return ProposalText.noProject;
        }
        long open = proposals().stream().filter(each -> each.getState() == ProposalState.OPEN).count();
        return proposals().isEmpty()
                ? ProposalText.none
                : NLS.bind(ProposalText.selectSome, proposals().size(), open);
    }

    @Override
    public void setFocus() {
        panel.setFocus();
    }

    @Override
    public void dispose() {
        projects.removeListener(this);
        search.ifPresent(ProposalSearch::cancel);
        effect.end();
        actions.dispose();
        super.dispose();
    }
}
