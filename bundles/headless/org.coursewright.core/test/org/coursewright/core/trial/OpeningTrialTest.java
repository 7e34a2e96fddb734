package org.coursewright.core.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;

import org.coursewright.bond.BondSolver;
import org.coursewright.bond.Effort;
import org.coursewright.bond.WallLayout;
import org.coursewright.bond.advice.Dimension;
import org.coursewright.bond.advice.DimensionProfile;
import org.coursewright.bond.advice.ProfilePoint;
import org.coursewright.bond.advice.ProfilePoint.Basis;
import org.coursewright.core.PlanBuilder;
import org.coursewright.core.bond.BuildingLayout;
import org.coursewright.core.bond.LayoutOutcome;
import org.coursewright.measure.Length;
import org.coursewright.measure.Progress;
import org.coursewright.model.building.Bond;
import org.coursewright.model.building.Opening;
import org.coursewright.model.building.Wall;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class OpeningTrialTest {

    private final PlanBuilder plan = new PlanBuilder();
    private Wall wall;
    private Opening opening;
    private LayoutOutcome laid;

    /** Ten units of 14 in and nine joints of 1/2 in; a second wall at its end. */
    @BeforeEach
    void layARoomWithAnOpening() {
        wall = plan.wall("W1", "0", "0", "144 1/2", "0", Bond.STRETCHER, "18");
        plan.wall("W2", "144 1/2", "0", "144 1/2", "100", Bond.STRETCHER, "18");
        plan.unit().getSpecialLengths().add(PlanBuilder.in("6 3/4"));
        opening = plan.opening(wall, "N1", "45", "44", "0", "9");
        laid = lay();
    }

    private LayoutOutcome lay() {
        return new BuildingLayout(BondSolver.standard()).lay(plan.project(), Progress.NONE);
    }

    private static Optional<WallLayout> wallOf(LayoutOutcome outcome) {
        return outcome.result().walls().stream().filter(each -> each.mark().equals("W1")).findFirst();
    }

    @Test
    void improvedAnswerIsWhatTheBuildingIsLaidLikeAfterTheEdit() {
        Length to = PlanBuilder.in("43 1/2");
        LayoutOutcome tried = new OpeningTrial(opening, laid).improved(to, opening.getWidth(), Progress.NONE);

        assertThat(opening.getOffset()).as("the project is as it was").isEqualTo(PlanBuilder.in("45"));
        opening.setOffset(to);
        WallLayout after = wallOf(lay()).orElseThrow();
        assertThat(wallOf(tried)).get().satisfies(layout -> {
            assertThat(layout.cutPieces()).isEqualTo(after.cutPieces());
            assertThat(layout.lapViolations()).isEqualTo(after.lapViolations());
        });
    }

    @Test
    void cornersStayHandedAsTheyAre() {
        LayoutOutcome tried = new OpeningTrial(opening, laid).first(PlanBuilder.in("50"), opening.getWidth(),
                Progress.NONE);

        assertThat(tried.result().effort()).isEqualTo(Effort.QUICK);
        assertThat(tried.result().throughOnOdd()).isEqualTo(laid.result().throughOnOdd()).isNotEmpty();
    }

    @Test
    void onlyTheWallItselfIsLaid() {
        LayoutOutcome tried = new OpeningTrial(opening, laid).first(PlanBuilder.in("50"), opening.getWidth(),
                Progress.NONE);

        assertThat(tried.result().walls()).filteredOn(each -> !each.mark().equals("W1"))
                .allSatisfy(each -> assertThat(each.courses()).isEmpty());
        assertThat(wallOf(tried)).get().satisfies(layout -> assertThat(layout.courses()).hasSize(4));
    }

    @Test
    void placeThatCannotBeHasNoWall() {
        LayoutOutcome tried = new OpeningTrial(opening, laid).first(PlanBuilder.in("140"), opening.getWidth(),
                Progress.NONE);

        assertThat(wallOf(tried)).isEmpty();
    }

    @Test
    void profileAgreesWithWhatIsLaid() {
        Length step = PlanBuilder.in("1/4");
        DimensionProfile profile = OpeningAdvice.of(opening, laid).orElseThrow().profile(Dimension.OFFSET,
                PlanBuilder.in("2"), step, Progress.NONE);

        assertThat(profile.points()).hasSize(17).extracting(ProfilePoint::change).isSorted();
        assertThat(profile.points()).filteredOn(point -> point.change().signum() == 0).singleElement()
                .satisfies(point -> {
                    assertThat(point.basis()).isEqualTo(Basis.LAID);
                    assertThat(point.cutPieces()).isEqualTo(wallOf(laid).orElseThrow().cutPieces());
                });
        List<ProfilePoint> best = profile.points().stream().filter(point -> point.change().equals(profile.best()))
                .toList();
        assertThat(best.get(0).cutPieces()).isLessThan(wallOf(laid).orElseThrow().cutPieces());
    }

    @Test
    void profileOfTheWidthAgreesWithWhatIsLaid() {
        DimensionProfile profile = OpeningAdvice.of(opening, laid).orElseThrow().profile(Dimension.WIDTH,
                PlanBuilder.in("2"), PlanBuilder.in("1/4"), Progress.NONE);

        assertThat(profile.planned()).isEqualTo(opening.getWidth());
        profile.points().stream().filter(point -> point.basis() == Basis.LAID).forEach(point -> {
            LayoutOutcome tried = new OpeningTrial(opening, laid).improved(opening.getOffset(),
                    opening.getWidth().plus(point.change()), Progress.NONE);
            assertThat(wallOf(tried).orElseThrow().cutPieces()).isEqualTo(point.cutPieces());
        });
    }

    @Test
    void openingWithoutAMarkHasNoAdvice() {
        opening.setMark(null);

        assertThat(OpeningAdvice.of(opening, laid)).isEmpty();
    }
}
