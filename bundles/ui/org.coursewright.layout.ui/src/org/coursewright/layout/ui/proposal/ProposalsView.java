package org.coursewright.layout.ui.proposal;

import java.util.List;
import java.util.Optional;

import org.coursewright.core.proposal.AcceptProposalsCommand;
import org.coursewright.core.session.ProjectSession;
import org.coursewright.core.trial.ProposalTrial.Effect;
import org.coursewright.layout.ui.trial.EffectTrial;
import org.coursewright.model.edit.ElementLabels;
import org.coursewright.model.edit.command.AnswerProposalsCommand;
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
public final class ProposalsView extends ViewPart implements OpenProjectsListener {

    /** Under which the view is registered. */
    public static final String ID = "org.coursewright.layout.ui.proposals";

    private OpenProjects projects;
    private ProjectActions actions;
    private ProposalsPanel panel;
    private EffectTrial effect;
    private List<Proposal> asked = List.of();
    private ProposalFinding finding;
    private Optional<ProjectSession> shown = Optional.empty();

    @Override
    public void createPartControl(Composite parent) {
        projects = getSite().getService(OpenProjects.class);
        actions = new ProjectActions(getViewSite());
        panel = new ProposalsPanel(parent, new Chosen());
        finding = new ProposalFinding(projects, parent.getDisplay()::asyncExec, new Search());
        effect = new EffectTrial(parent.getDisplay()::asyncExec, new Effects());
        projects.addListener(this);
        show();
    }

    /** What the panel's buttons do. */
    private final class Chosen implements ProposalsPanel.Choices {

        @Override
        public void find() {
            projects.active().ifPresent(finding::in);
        }

        @Override
        public void cancel() {
            finding.cancel();
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
        asked = proposals.stream().filter(each -> each.getState() != ProposalState.ACCEPTED).toList();
        effect.ask(asked);
        if (asked.isEmpty()) {
            say(counted());
        } else {
            sayComing(0);
        }
    }

    private void sayComing(int percent) {
        say(NLS.bind(ProposalText.effectComing, ProposalsPanel.several(asked), percent));
    }

    /** A refused proposal keeps what it was refused for, while the building may have gone on. */
    private String asOfNow() {
        List<Proposal> refused = asked.stream().filter(each -> each.getState() == ProposalState.REFUSED).toList();
        return refused.isEmpty() ? "" : NLS.bind(ProposalText.effectNow, ElementLabels.of(refused));
    }

    /** What the view says of the proposals that are selected, unless others are being looked for. */
    private final class Effects implements EffectTrial.Listener {

        @Override
        public void progressed(int percent) {
            sayComing(percent);
        }

        @Override
        public void found(Effect found) {
            say(new EffectWords(found).of(ProposalsPanel.several(asked)) + asOfNow());
        }

        @Override
        public void failed(String reason) {
            say(NLS.bind(ProposalText.effectFailed, reason));
        }
    }

    private void say(String words) {
        if (!panel.isDisposed() && !finding.isGoingOn()) {
            panel.say(words);
        }
    }

    /** What the view says of the search. */
    private final class Search implements ProposalFinding.Told {

        @Override
        public void looking(int percent) {
            show(true, NLS.bind(ProposalText.looking, percent));
        }

        @Override
        public void ended(String words) {
            show(false, words);
        }

        @Override
        public void givenUp() {
            show(false, counted());
        }

        private void show(boolean goingOn, String words) {
            if (!panel.isDisposed()) {
                panel.searching(goingOn);
                panel.say(words);
            }
        }
    }

    /** Makes an edit, or says why it cannot be made. */
    private void execute(ProjectCommand command) {
        command.refusal().ifPresent(refusal -> say(refusal.reason()));
        projects.active().filter(session -> command.canExecute()).ifPresent(session -> session.execute(command));
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
        finding.cancel();
        effect.end();
        actions.dispose();
        super.dispose();
    }
}
