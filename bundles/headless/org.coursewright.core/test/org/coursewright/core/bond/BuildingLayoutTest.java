package org.coursewright.core.bond;

import static org.assertj.core.api.Assertions.assertThat;

import org.coursewright.bond.BondSolver;
import org.coursewright.bond.Run;
import org.coursewright.core.PlanBuilder;
import org.coursewright.core.finding.Severity;
import org.coursewright.measure.Length;
import org.coursewright.measure.Progress;
import org.coursewright.model.building.Wall;
import org.junit.jupiter.api.Test;

class BuildingLayoutTest {

    private final PlanBuilder plan = new PlanBuilder();

    private LayoutOutcome lay() {
        return new BuildingLayout(BondSolver.standard()).lay(plan.project(), Progress.NONE);
    }

    /**
     * A square corner of 14 x 10 in units with 1/2 in joints laps exactly 3 1/2 in and needs no cut (common practice, no
     * source): the face between corners is n units and n joints of either wall, n·14 1/2 + 10.
     */
    @Test
    void squareRoomOnTheModuleTakesWholeUnitsOnly() {
        String side = "232"; // centre to centre; outer face 242 = 16 · 14 1/2 + 10
        plan.wall("W1", "0", "0", side, "0");
        plan.wall("W2", side, "0", side, side);
        plan.wall("W3", side, side, "0", side);
        plan.wall("W4", "0", side, "0", "0");

        LayoutOutcome outcome = lay();

        // In each course a wall runs through at one end and butts at the other: 16 units and 16 joints in 232 in.
        assertThat(outcome.totals()).isEqualTo(new UnitCount(4 * 20 * 16, 0, 0));
        assertThat(outcome.result().walls()).allSatisfy(wall -> {
            assertThat(wall.lapViolations()).isZero();
            assertThat(wall.optimal()).isTrue();
        });
        assertThat(outcome.findings()).isEmpty();
        assertThat(outcome.courses("W2")).hasSize(20).containsEntry(1, new UnitCount(16, 0, 0)).containsEntry(20,
                new UnitCount(16, 0, 0));
        assertThat(outcome.courses("W9")).as("no such wall").isEmpty();
    }

    @Test
    void everyRunAddsUpExactly() {
        Wall wall = plan.wall("W1", "0", "0", "251", "0");
        plan.opening(wall, "O1", "61 1/4", "36", "27", "45").setLintelType(plan.lintel("L", "9", "12"));

        LayoutOutcome outcome = lay();

        assertThat(outcome.result().walls().get(0).courses()).hasSize(20).allSatisfy(
                course -> assertThat(course.runs()).isNotEmpty()
                        .allSatisfy(run -> assertThat(sum(run)).isEqualTo(run.length())));
    }

    private static Length sum(Run run) {
        Length pieces = run.pieces().stream().map(piece -> piece.length()).reduce(Length.ZERO, Length::plus);
        return run.joint().map(joint -> {
            assertThat(joint.count()).isEqualTo(run.jointCount());
            return pieces.plus(joint.total());
        }).orElse(pieces);
    }

    @Test
    void pierThatNothingFillsIsAnErrorAndTheRestIsLaid() {
        Wall wall = plan.wall("W1", "0", "0", "240", "0");
        plan.opening(wall, "O1", "2", "36", "27", "45");

        LayoutOutcome outcome = lay();

        assertThat(outcome.findings()).filteredOn(finding -> finding.severity() == Severity.ERROR).hasSize(10)
                .allSatisfy(finding -> assertThat(finding.code()).isEqualTo("lay.unfillable"))
                .first().satisfies(finding -> assertThat(finding.element().name()).isEqualTo("wall W1, course 7"));
        assertThat(outcome.totals().whole()).isPositive();
    }

    @Test
    void buildingWithoutWallsHasAnEmptyLayout() {
        assertThat(lay().totals()).isEqualTo(new UnitCount(0, 0, 0));
    }
}
