package org.coursewright.core.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.coursewright.core.PlanBuilder.in;

import java.util.Optional;

import org.coursewright.bond.BondSolver;
import org.coursewright.bond.advice.Advice;
import org.coursewright.bond.advice.BondAdvisor;
import org.coursewright.bond.advice.Dimension;
import org.coursewright.bond.advice.DimensionProfile;
import org.coursewright.bond.advice.ProfilePoint;
import org.coursewright.core.PlanBuilder;
import org.coursewright.core.bond.BuildingLayout;
import org.coursewright.core.bond.LayoutOutcome;
import org.coursewright.measure.Length;
import org.coursewright.measure.Progress;
import org.coursewright.model.building.Bond;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;
import org.coursewright.model.edit.command.ProjectCommand;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * Walls that may move sideways: units of 14 in, halves of 6 3/4 in, walls 10 in thick, joints of 3/8 to 3/4 in. A partition
 * between two walls has a joint at either end.
 */
class WallMoveTest {

    private final PlanBuilder plan = new PlanBuilder();

    @BeforeEach
    void stockHalves() {
        plan.unit().getSpecialLengths().add(in("6 3/4"));
    }

    private Wall wall(String mark, String fromX, String fromY, String toX, String toY) {
        return plan.wall(mark, fromX, fromY, toX, toY, Bond.STRETCHER, "18");
    }

    /** The partition is 10 in shorter than the walls are apart from line to line. */
    private Wall partitionBetweenWalls(String apart) {
        wall("P1", "0", "0", apart, "0");
        wall("W2", "0", "-72 1/4", "0", "72 1/4");
        return wall("W3", apart, "-72 1/4", apart, "72 1/4");
    }

    private FitOutcome advise(Optional<Length> budget) {
        return new ProjectFit(BondAdvisor.standard()).advise(plan.project(),
                new FitSettings(Optional.empty(), budget, Length.ZERO, Optional.empty()), Progress.NONE);
    }

    private LayoutOutcome lay() {
        return new BuildingLayout(BondSolver.standard()).lay(plan.project(), Progress.NONE);
    }

    private void apply(Advice advice) {
        FitChanges changes = new FitChanges(plan.project());
        advice.proposals().forEach(
                proposal -> changes.commands(advice, proposal).forEach(ProjectCommand::execute));
    }

    /**
     * 135 in: nine units and ten joints come to 133 1/2 in at most, eight units, two halves and eleven joints to 133 3/4 in;
     * nine units, a half and eleven joints to 136 7/8 in at least. So the wall comes nearer by 1 1/2 in, and the partition
     * is laid of nine units, and of eight between halves, in turn.
     */
    @Test
    void wallMovesUntilThePartitionThatEndsAtItNeedsNoCut() {
        partitionBetweenWalls("145").setMoveTolerance(in("1 3/4"));
        Advice advice = advise(Optional.empty()).advice();

        assertThat(advice.before().cutPieces()).isPositive();
        assertThat(advice.proposals()).singleElement().satisfies(proposal -> {
            assertThat(proposal.adjustable().wall()).isEqualTo("W3");
            assertThat(proposal.adjustable().opening()).isEmpty();
            assertThat(proposal.adjustable().dimension()).isEqualTo(Dimension.OFFSET);
            assertThat(proposal.from()).isEqualTo(in("145"));
            assertThat(proposal.to()).isEqualTo(in("143 1/2"));
            assertThat(proposal.cutsBefore()).isEqualTo(advice.before().cutPieces());
            assertThat(proposal.cutsAfter()).isZero();
        });
        assertThat(advice.after().cutPieces()).isZero();
    }

    @Test
    void whatIsPromisedOfAMoveComesTrueWhenItIsMade() {
        Wall wall = partitionBetweenWalls("145");
        wall.setMoveTolerance(in("1 3/4"));
        FitOutcome outcome = advise(Optional.empty());

        apply(outcome.advice());

        assertThat(wall.getFromX()).isEqualTo(in("143 1/2"));
        assertThat(wall.getToX()).isEqualTo(in("143 1/2"));
        assertThat(lay().result()).isEqualTo(outcome.advice().after());
        assertThat(outcome.saving().cuts()).isEqualTo(outcome.advice().before().cutPieces());
    }

    /** Four walls round a room, two of them free to move: whatever is proposed, it comes true. */
    @Test
    void roomsComeOutAsPromised() {
        long spared = 0;
        for (String wide : new String[]{"139", "147 1/4", "152", "161 1/2"}) {
            PlanBuilder room = room(wide);
            FitOutcome outcome = new ProjectFit(BondAdvisor.standard()).advise(room.project(),
                    new FitSettings(Optional.empty(), Optional.of(in("4")), Length.ZERO, Optional.empty()),
                    Progress.NONE);
            FitChanges changes = new FitChanges(room.project());
            outcome.advice().proposals().forEach(proposal -> changes.commands(outcome.advice(), proposal)
                    .forEach(ProjectCommand::execute));
            spared += outcome.saving().cuts();

            assertThat(outcome.advice().profiles()).hasSize(2)
                    .allSatisfy(profile -> assertThat(profile.points()).hasSize(25));
            assertThat(outcome.advice().movement()).isLessThanOrEqualTo(in("4"));
            assertThat(outcome.saving().cuts()).isNotNegative();
            assertThat(new BuildingLayout(BondSolver.standard()).lay(room.project(), Progress.NONE).result())
                    .isEqualTo(outcome.advice().after());
        }
        assertThat(spared).isPositive();
    }

    private static PlanBuilder room(String wide) {
        PlanBuilder room = new PlanBuilder();
        room.wall("W1", "0", "0", wide, "0", Bond.STRETCHER, "18");
        room.wall("W2", wide, "0", wide, "120", Bond.STRETCHER, "18").setMoveTolerance(in("3"));
        room.wall("W3", wide, "120", "0", "120", Bond.STRETCHER, "18").setMoveTolerance(in("3"));
        room.wall("W4", "0", "120", "0", "0", Bond.STRETCHER, "18");
        return room;
    }

    /** Every place of the profile, the wall really moved there and the building laid with its corners handed as planned. */
    @Test
    void profileAgreesWithLayingTheBuildingForEveryPlace() {
        Wall wall = partitionBetweenWalls("145");
        wall.setMoveTolerance(in("1"));
        DimensionProfile profile = advise(Optional.empty()).advice().profiles().get(0);
        SidewaysMove move = SidewaysMove.of(wall).orElseThrow();

        assertThat(profile.points()).hasSize(9);
        for (ProfilePoint point : profile.points()) {
            int laid = laid(move, point.change());
            switch (point.basis()) {
                case LAID -> assertThat(point.cutPieces()).isEqualTo(laid);
                case FITTED -> assertThat(point.cutPieces()).isGreaterThanOrEqualTo(laid);
                case BOUND -> assertThat(point.cutPieces()).isLessThanOrEqualTo(laid);
            }
            assertThat(point.leastCuts()).isLessThanOrEqualTo(laid);
        }
    }

    /** Cuts of the partition, the only wall that changes. */
    private int laid(SidewaysMove move, Length change) {
        ProjectCommand command = move.command(change);
        if (change.signum() != 0) {
            command.execute();
        }
        int cuts = lay().result().walls().get(0).cutPieces();
        if (change.signum() != 0) {
            command.undo();
        }
        return cuts;
    }

    @Test
    void openingsOfAWallWhoseStartMovesKeepTheirPlaces() {
        Wall start = partitionBetweenWalls("145");
        Wall partition = (Wall) plan.project().getBuilding().getStoreys().get(0).getWalls().get(0);
        Wall wall = (Wall) plan.project().getBuilding().getStoreys().get(0).getWalls().get(1);
        Opening door = plan.opening(partition, "D1", "50", "40", "0", "9");

        SidewaysMove.of(wall).orElseThrow().command(in("3")).execute();

        assertThat(partition.getFromX()).isEqualTo(in("3"));
        assertThat(partition.getToX()).isEqualTo(start.getFromX());
        assertThat(door.getOffset()).isEqualTo(in("47"));
    }

    @Test
    void wallDoesNotMoveBeyondTheBudget() {
        partitionBetweenWalls("145").setMoveTolerance(in("3"));
        Advice advice = advise(Optional.of(in("1 1/4"))).advice();

        assertThat(advice.movement()).isLessThanOrEqualTo(in("1 1/4"));
        assertThat(advice.after().cutPieces()).isPositive();
    }

    /** The opening of the outer wall ends 2 in before the partition's face. */
    @Test
    void partitionDoesNotMoveBeforeAnOpening() {
        Wall outer = wall("W1", "0", "0", "289", "0");
        wall("P1", "150", "0", "150", "100").setMoveTolerance(in("4"));
        plan.opening(outer, "N1", "99", "44", "0", "9");

        assertThat(advise(Optional.empty()).advice().profiles()).singleElement()
                .satisfies(profile -> assertThat(profile.points()).extracting(ProfilePoint::change)
                        .contains(in("2").negated(), in("4")).doesNotContain(in("2 1/4").negated()));
    }

    /** A wall in line with it at a corner would have to go along. */
    @Test
    void wallThatOthersAreInLineWithStays() {
        wall("W1", "0", "0", "100", "0").setMoveTolerance(in("3"));
        wall("W2", "100", "0", "200", "0");

        assertThat(advise(Optional.empty()).advice().profiles()).isEmpty();
    }

    @Test
    void slantingWallStays() {
        wall("W1", "0", "0", "100", "30").setMoveTolerance(in("3"));

        assertThat(advise(Optional.empty()).advice().profiles()).isEmpty();
    }

    /** A larger tolerance never makes the building worse. */
    @Test
    void moreToleranceNeverAddsCuts() {
        Wall wall = partitionBetweenWalls("145");
        int least = Integer.MAX_VALUE;
        for (String tolerance : new String[]{"1/4", "1", "1 1/2", "2", "4"}) {
            wall.setMoveTolerance(in(tolerance));
            int cuts = advise(Optional.empty()).advice().after().cutPieces();
            assertThat(cuts).isLessThanOrEqualTo(least);
            least = cuts;
        }
        assertThat(least).isZero();
    }
}
