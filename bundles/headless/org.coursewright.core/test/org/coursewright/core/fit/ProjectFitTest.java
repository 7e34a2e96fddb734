package org.coursewright.core.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.coursewright.core.PlanBuilder.in;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.Optional;

import org.coursewright.bond.BondSolver;
import org.coursewright.bond.advice.BondAdvisor;
import org.coursewright.bond.advice.Dimension;
import org.coursewright.bond.advice.ProfilePoint;
import org.coursewright.core.PlanBuilder;
import org.coursewright.core.bond.BuildingLayout;
import org.coursewright.core.bond.LayoutOutcome;
import org.coursewright.measure.Length;
import org.coursewright.measure.Money;
import org.coursewright.measure.Progress;
import org.coursewright.model.building.Bond;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;
import org.coursewright.model.edit.command.ProjectCommand;
import org.coursewright.model.project.Project;
import org.junit.jupiter.api.Test;

/** Advice on projects: what may change, what is promised, and that it comes true. */
class ProjectFitTest {

    private static final FitSettings OPENINGS_ONLY = new FitSettings(Optional.empty(), Optional.empty(), Length.ZERO,
            Optional.empty());

    private final PlanBuilder plan = new PlanBuilder();

    private static FitOutcome advise(Project project, FitSettings settings) {
        return new ProjectFit(BondAdvisor.standard()).advise(project, settings, Progress.NONE);
    }

    private static LayoutOutcome lay(Project project) {
        return new BuildingLayout(BondSolver.standard()).lay(project, Progress.NONE);
    }

    private static void apply(Project project, FitOutcome outcome) {
        FitChanges changes = new FitChanges(project);
        outcome.advice().proposals().forEach(proposal -> changes.commands(outcome.advice(), proposal)
                .forEach(ProjectCommand::execute));
    }

    /** Ten units of 14 in and nine joints of 1/2 in, in four courses; the opening is 44 in wide. */
    private Opening openingAt(String offset) {
        Wall wall = plan.wall("W1", "0", "0", "144 1/2", "0", Bond.STRETCHER, "18");
        plan.unit().getSpecialLengths().add(in("6 3/4"));
        return plan.opening(wall, "N1", offset, "44", "0", "9");
    }

    @Test
    void openingIsProposedToMoveWithinItsTolerance() {
        openingAt("45").setMoveTolerance(in("3"));
        FitOutcome outcome = advise(plan.project(), OPENINGS_ONLY);

        assertThat(outcome.proposals()).singleElement().satisfies(proposal -> {
            assertThat(proposal.change().adjustable().dimension()).isEqualTo(Dimension.OFFSET);
            assertThat(proposal.change().from()).isEqualTo(in("45"));
            assertThat(proposal.change().movement()).isLessThanOrEqualTo(in("3"));
            assertThat(proposal.saving().cuts()).isPositive();
        });
        assertThat(outcome.advice().profiles().get(0).points()).hasSize(25);
    }

    @Test
    void whatIsPromisedComesTrueWhenTheChangesAreMade() {
        openingAt("45").setMoveTolerance(in("3"));
        FitOutcome outcome = advise(plan.project(), OPENINGS_ONLY);

        apply(plan.project(), outcome);

        LayoutOutcome laid = lay(plan.project());
        assertThat(laid.result()).isEqualTo(outcome.advice().after());
        assertThat(outcome.advice().before().cutPieces() - laid.result().cutPieces())
                .isEqualTo(outcome.saving().cuts());
    }

    @Test
    void projectIsNotChangedByAdvice() {
        Opening opening = openingAt("45");
        opening.setMoveTolerance(in("3"));
        advise(plan.project(), OPENINGS_ONLY);

        assertThat(opening.getOffset()).isEqualTo(in("45"));
    }

    @Test
    void openingWithoutToleranceStays() {
        openingAt("45");
        FitOutcome outcome = advise(plan.project(), OPENINGS_ONLY);

        assertThat(outcome.proposals()).isEmpty();
        assertThat(outcome.advice().profiles()).isEmpty();
    }

    /** The partition stands at 100 to 110 in along the wall, so the opening's far jamb may come to 100 in. */
    @Test
    void openingDoesNotMoveInFrontOfAPartition() {
        openingAt("54").setMoveTolerance(in("6"));
        plan.wall("P1", "105", "0", "105", "100", Bond.STRETCHER, "18");
        FitOutcome outcome = advise(plan.project(), OPENINGS_ONLY);

        assertThat(outcome.advice().profiles().get(0).points()).extracting(ProfilePoint::change)
                .allSatisfy(change -> assertThat(change).isLessThanOrEqualTo(in("2")));
    }

    /** Started at its free end, a wall grows backwards, and its opening keeps its place on the ground. */
    @Test
    void freeStartOfAWallMovesAndItsOpeningKeepsItsPlace() {
        Wall wall = plan.wall("W1", "0", "0", "150", "0", Bond.STRETCHER, "18");
        plan.wall("W2", "150", "0", "150", "100", Bond.STRETCHER, "18");
        plan.opening(wall, "N1", "46", "44", "0", "9");
        plan.unit().getSpecialLengths().add(in("6 3/4"));
        FitOutcome outcome = advise(plan.project(),
                new FitSettings(Optional.empty(), Optional.empty(), in("4"), Optional.empty()));
        Length jamb = wall.getFromX().plus(wall.getOpenings().get(0).getOffset());

        apply(plan.project(), outcome);

        assertThat(outcome.proposals()).anySatisfy(
                proposal -> assertThat(proposal.change().adjustable().dimension()).isEqualTo(Dimension.LENGTH));
        assertThat(lay(plan.project()).result()).isEqualTo(outcome.advice().after());
        assertThat(wall.getFromX().plus(wall.getOpenings().get(0).getOffset())).isEqualTo(jamb);
    }

    @Test
    void toleranceOfAWallGoesBeforeThatOfTheSettings() {
        plan.wall("W1", "0", "0", "150", "0", Bond.STRETCHER, "18").setSizeTolerance(in("2"));
        plan.wall("W2", "0", "200", "150", "200", Bond.STRETCHER, "18");
        FitOutcome outcome = advise(plan.project(),
                new FitSettings(Optional.empty(), Optional.empty(), in("4"), Optional.empty()));

        assertThat(outcome.advice().profiles()).extracting(profile -> profile.adjustable().most())
                .containsExactly(in("2"), in("4"));
    }

    @Test
    void onlyTheWallThatIsNamedChanges() {
        openingAt("45").setMoveTolerance(in("3"));
        Wall other = plan.wall("W2", "0", "200", "144 1/2", "200", Bond.STRETCHER, "18");
        plan.opening(other, "N1", "45", "44", "0", "9").setMoveTolerance(in("3"));
        FitOutcome outcome = advise(plan.project(),
                new FitSettings(Optional.of("W2"), Optional.empty(), Length.ZERO, Optional.empty()));

        assertThat(outcome.proposals()).isNotEmpty()
                .allSatisfy(proposal -> assertThat(proposal.change().adjustable().wall()).isEqualTo("W2"));
    }

    @Test
    void budgetIsKept() {
        openingAt("45").setMoveTolerance(in("3"));
        FitOutcome outcome = advise(plan.project(),
                new FitSettings(Optional.empty(), Optional.of(in("1/2")), Length.ZERO, Optional.empty()));

        assertThat(outcome.advice().movement()).isLessThanOrEqualTo(in("1/2"));
    }

    /** Four minutes and 2 USD a cut. */
    @Test
    void timeAndMoneyFollowFromTheCutsSpared() {
        openingAt("45").setMoveTolerance(in("3"));
        Money dollars = new Money(BigDecimal.valueOf(2), Currency.getInstance("USD"));
        FitOutcome outcome = advise(plan.project(), new FitSettings(Optional.empty(), Optional.empty(), Length.ZERO,
                Optional.of(new CutRate(BigDecimal.valueOf(4), Optional.of(dollars)))));

        long cuts = outcome.saving().cuts();
        assertThat(cuts).isPositive();
        assertThat(outcome.saving().minutes()).contains(BigDecimal.valueOf(4 * cuts));
        assertThat(outcome.saving().cost()).map(Money::amount).contains(BigDecimal.valueOf(2 * cuts));
    }
}
