package org.coursewright.core.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.coursewright.core.PlanBuilder.in;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;

import org.coursewright.bond.BondResult;
import org.coursewright.bond.advice.BondAdvisor;
import org.coursewright.core.PlanBuilder;
import org.coursewright.core.bond.LayoutResults;
import org.coursewright.core.cost.PriceOutcome;
import org.coursewright.core.cost.PriceResults;
import org.coursewright.core.derive.DerivationGraph;
import org.coursewright.core.fit.FitOutcome;
import org.coursewright.core.fit.FitSettings;
import org.coursewright.core.fit.ProjectFit;
import org.coursewright.core.proposal.AcceptProposalsCommand;
import org.coursewright.core.proposal.ProposalChanges;
import org.coursewright.core.proposal.ProposalDrafts;
import org.coursewright.measure.Length;
import org.coursewright.measure.Money;
import org.coursewright.measure.Progress;
import org.coursewright.model.building.Bond;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;
import org.coursewright.model.edit.command.OfferProposalsCommand;
import org.coursewright.model.estimate.EstimateFactory;
import org.coursewright.model.estimate.Rate;
import org.coursewright.model.estimate.RateKind;
import org.coursewright.model.proposal.Dimension;
import org.coursewright.model.proposal.Proposal;
import org.coursewright.model.proposal.ProposalFactory;
import org.coursewright.model.proposal.ProposalState;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class ProposalTrialTest {

    private static final Instant NOW = Instant.parse("2026-11-25T12:00:00Z");

    private final PlanBuilder plan = new PlanBuilder();
    private final List<ProposalTrial> trials = new ArrayList<>();
    private Wall wall;
    private Opening opening;

    /** Ten units of 14 in and nine joints of 1/2 in; the opening fits none of them where it is. */
    @BeforeEach
    void planAWall() {
        wall = plan.wall("W1", "0", "0", "144 1/2", "0", Bond.STRETCHER, "18");
        plan.unit().getSpecialLengths().add(in("6 3/4"));
        opening = plan.opening(wall, "N1", "45", "44", "0", "9");
        opening.setMoveTolerance(in("3"));
    }

    @AfterEach
    void endTheTrials() {
        trials.forEach(ProposalTrial::end);
    }

    private FitOutcome advise() {
        return new ProjectFit(BondAdvisor.standard()).advise(plan.project(), new FitSettings(Optional.empty(),
                Optional.empty(), Length.ZERO, Optional.empty()), Progress.NONE);
    }

    private List<Proposal> offered(FitOutcome outcome) {
        List<Proposal> drafts = new ProposalDrafts(plan.project()).of(outcome, "Builder", NOW);
        new OfferProposalsCommand(plan.project(), drafts).execute();
        return drafts;
    }

    @Test
    void whatTheAdviceFoundIsOfferedWithItsReason() {
        FitOutcome outcome = advise();

        assertThat(offered(outcome)).singleElement().satisfies(draft -> {
            assertThat(draft.getMark()).isEqualTo("P1");
            assertThat(draft.getOpening()).isSameAs(opening);
            assertThat(draft.getDimension()).isEqualTo(Dimension.OFFSET);
            assertThat(draft.getFrom()).isEqualTo(in("45"));
            assertThat(draft.getReason()).contains("%d cut piece".formatted(outcome.saving().cuts()));
            assertThat(draft.getState()).isEqualTo(ProposalState.OPEN);
            assertThat(draft.getAt()).isEqualTo(NOW);
        });
    }

    @Test
    void effectOfAcceptingIsWhatWasPromised() {
        FitOutcome outcome = advise();
        ProposalTrial.Effect effect = effect(offered(outcome));

        assertThat(effect.before().cuts() - effect.after().cuts()).isEqualTo(outcome.saving().cuts()).isPositive();
        assertThat(opening.getOffset()).as("the project is as it was").isEqualTo(in("45"));
    }

    private ProposalTrial.Effect effect(List<Proposal> proposals) {
        return trial().lay(proposals, Progress.NONE);
    }

    private ProposalTrial trial() {
        ProposalTrial made = new ProposalTrial(plan.project());
        trials.add(made);
        return made;
    }

    /** Only the units have a rate: fewer blocks are cut up, so fewer are bought. */
    @Test
    void effectIsWhatTheProjectTakesOnceTheProposalsAreAccepted() {
        priceUnits("1.50 USD");
        List<Proposal> proposals = offered(advise());
        ProposalTrial.Effect effect = effect(proposals);

        assertThat(effect.before()).isEqualTo(now());
        new AcceptProposalsCommand(proposals).execute();
        assertThat(effect.after()).isEqualTo(now());
        assertThat(effect.after().price().orElseThrow().amount()).isNotEqualTo(effect.before().price().orElseThrow()
                .amount());
    }

    private void priceUnits(String price) {
        Rate rate = EstimateFactory.eINSTANCE.createRate();
        rate.setMark(plan.unit().getMark());
        rate.setKind(RateKind.MATERIAL);
        rate.setPrice(Money.fromStored(price));
        rate.setUnitCode("H87");
        plan.project().setCurrency("USD");
        plan.project().setEstimate(EstimateFactory.eINSTANCE.createEstimate());
        plan.project().getEstimate().getRates().add(rate);
    }

    private ProposalTrial.Count now() {
        BondResult laid = DerivationGraph.once(plan.project(), LayoutResults.LAYOUT).result();
        PriceOutcome price = DerivationGraph.once(plan.project(), PriceResults.PRICE);
        return new ProposalTrial.Count(0, laid.lapViolations(), laid.cutPieces(), Optional.of(price.total().total()),
                price.isComplete());
    }

    /** The wall lies along the plan's origin; a partition that ends on it goes with it. */
    @Test
    void acceptingTheMoveOfAWallMovesWhatEndsAtIt() {
        Wall partition = plan.wall("P1", "120", "0", "120", "100", Bond.STRETCHER, "18");
        Proposal move = proposal(Dimension.OFFSET, "0", "2");
        move.setOpening(null);

        assertThat(new ProposalChanges(move).isTimely()).isTrue();
        new AcceptProposalsCommand(List.of(move)).execute();

        assertThat(wall.getFromY()).isEqualTo(in("2"));
        assertThat(wall.getToY()).isEqualTo(in("2"));
        assertThat(partition.getFromY()).isEqualTo(in("2"));
        assertThat(partition.getToY()).isEqualTo(in("100"));
    }

    /** It was about an opening at 45 in: that is not where the wall stands. */
    @Test
    void proposalOfAnOpeningThatIsGoneDoesNotMoveTheWall() {
        Proposal orphan = proposal(Dimension.OFFSET, "45", "43");
        orphan.setOpening(null);

        assertThat(new ProposalChanges(orphan).now()).isEmpty();
        assertThat(new AcceptProposalsCommand(List.of(orphan)).canExecute()).isFalse();
    }

    @Test
    void oneQuestionLeavesNothingBehindForTheNext() {
        List<Proposal> proposals = offered(advise());
        ProposalTrial trial = trial();
        ProposalTrial.Effect first = trial.lay(proposals, Progress.NONE);

        assertThat(trial.lay(proposals, Progress.NONE)).isEqualTo(first);
        assertThat(first.before()).isNotEqualTo(first.after());
    }

    @Test
    void withoutRatesThereIsNoPrice() {
        ProposalTrial.Effect effect = effect(offered(advise()));

        assertThat(effect.before().price()).isEmpty();
        assertThat(effect.after().price()).isEmpty();
    }

    @Test
    void workThatIsNoLongerWantedEndsAndCanBeAskedForAgain() {
        List<Proposal> proposals = offered(advise());
        ProposalTrial trial = trial();

        assertThatExceptionOfType(CancellationException.class)
                .isThrownBy(() -> trial.lay(proposals, Progress.until(() -> true)));
        assertThat(trial.lay(proposals, Progress.NONE)).isEqualTo(effect(proposals));
    }

    @Test
    void acceptingMovesTheOpeningAndIsUndoneInOneStep() {
        List<Proposal> proposals = offered(advise());
        AcceptProposalsCommand accept = new AcceptProposalsCommand(proposals);
        accept.execute();

        assertThat(opening.getOffset()).isEqualTo(proposals.get(0).getTo());
        assertThat(proposals.get(0).getState()).isEqualTo(ProposalState.ACCEPTED);

        accept.undo();
        assertThat(opening.getOffset()).isEqualTo(in("45"));
        assertThat(proposals.get(0).getState()).isEqualTo(ProposalState.OPEN);

        accept.redo();
        assertThat(opening.getOffset()).isEqualTo(proposals.get(0).getTo());
    }

    @Test
    void wallIsMadeLongerAtItsFreeEnd() {
        Proposal longer = proposal(Dimension.LENGTH, "144 1/2", "146");
        new AcceptProposalsCommand(List.of(longer)).execute();

        assertThat(wall.getToX().minus(wall.getFromX())).isEqualTo(in("146"));
        assertThat(wall.getFromX()).isEqualTo(Length.ZERO);
    }

    @Test
    void proposalIsOutOfDateOnceTheDimensionHasChanged() {
        Proposal wider = proposal(Dimension.WIDTH, "44", "43 1/2");
        wider.setOpening(opening);
        assertThat(new ProposalChanges(wider).isTimely()).isTrue();

        opening.setWidth(in("40"));
        assertThat(new ProposalChanges(wider).isTimely()).isFalse();
    }

    @Test
    void proposalWithoutItsOpeningCannotBeAccepted() {
        AcceptProposalsCommand accept = new AcceptProposalsCommand(List.of(proposal(Dimension.WIDTH, "44", "43")));

        assertThat(accept.canExecute()).isFalse();
        assertThat(accept.refusal()).isPresent();
    }

    private Proposal proposal(Dimension dimension, String from, String to) {
        Proposal proposal = ProposalFactory.eINSTANCE.createProposal();
        proposal.setMark("P7");
        proposal.setWall(wall);
        proposal.setDimension(dimension);
        proposal.setFrom(in(from));
        proposal.setTo(in(to));
        plan.project().getProposals().add(proposal);
        return proposal;
    }
}
