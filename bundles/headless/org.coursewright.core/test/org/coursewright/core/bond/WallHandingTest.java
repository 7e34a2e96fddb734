package org.coursewright.core.bond;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;

import org.coursewright.bond.BondSolver;
import org.coursewright.core.PlanBuilder;
import org.coursewright.measure.Progress;
import org.coursewright.model.building.Bond;
import org.coursewright.model.building.Junction;
import org.coursewright.model.building.JunctionEnd;
import org.coursewright.model.building.WallPlace;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class WallHandingTest {

    private final PlanBuilder plan = new PlanBuilder();

    @BeforeEach
    void drawACorner() {
        plan.wall("W1", "0", "0", "144 1/2", "0", Bond.STRETCHER, "18");
        plan.wall("W2", "144 1/2", "0", "144 1/2", "100", Bond.STRETCHER, "18");
    }

    private LayoutOutcome lay() {
        return new BuildingLayout(BondSolver.standard()).lay(plan.project(), Progress.NONE);
    }

    private WallHanding handing() {
        return WallHanding.at(lay(), "W1", WallPlace.END).orElseThrow();
    }

    @Test
    void freeEndHasNoHanding() {
        assertThat(WallHanding.at(lay(), "W1", WallPlace.START)).isEmpty();
    }

    @Test
    void bothWallsOfACornerTellTheSame() {
        assertThat(handing().rivals()).containsExactlyInAnyOrder("W1", "W2");
        assertThat(WallHanding.at(lay(), "W2", WallPlace.START).orElseThrow().throughOnOdd())
                .isEqualTo(handing().throughOnOdd());
        assertThat(handing().isPinned()).isFalse();
    }

    @Test
    void chosenWallRunsThroughUntilTheChoiceIsTakenBack() {
        String other = handing().throughOnOdd().equals("W1") ? "W2" : "W1";
        handing().choose(plan.project().getBuilding(), Optional.of(other)).execute();

        assertThat(handing().throughOnOdd()).isEqualTo(other);
        assertThat(handing().isPinned()).isTrue();
        Junction junction = plan.project().getBuilding().getJunctions().get(0);
        assertThat(junction.getEnds()).extracting(JunctionEnd::getPlace).containsExactlyInAnyOrder(WallPlace.END,
                WallPlace.START);

        handing().choose(plan.project().getBuilding(), Optional.empty()).execute();
        assertThat(handing().isPinned()).isFalse();
        assertThat(plan.project().getBuilding().getJunctions()).hasSize(1);
    }
}
