package org.coursewright.bond.internal.refit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.coursewright.bond.WallBuilder.in;
import static org.coursewright.bond.WallBuilder.rule;
import static org.coursewright.bond.WallBuilder.stock;
import static org.coursewright.bond.WallBuilder.wall;

import java.util.Optional;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.Obstacle;
import org.coursewright.bond.RandomRooms;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.internal.building.LayingCost;
import org.coursewright.bond.internal.building.Layings;
import org.coursewright.measure.Progress;
import org.junit.jupiter.api.Test;

/** Layouts fitted to walls whose dimensions have changed. */
class RefitWallTest {

    /** Ten units of 14 in and nine joints of 1/2 in, four courses; the opening is 44 in wide and two courses high. */
    private static BondRequest opening(String from) {
        return wall("144 1/2").stocked(stock("14", "6 3/4")).ruled(rule("3 1/2", "1/2", "1/2", "1/2")).courses(4)
                .obstacle(Obstacle.Kind.OPENING, in(from), in(from).plus(in("44")), 1, 2).alone();
    }

    private static RefitWall laid(HandedBuilding building, int wall) {
        return building.refit(building.runs(building.request().walls().get(wall)), building.result().walls().get(wall));
    }

    private static Optional<RefitWall> fitted(RefitWall laid, WallFace changed) {
        return laid.fit(laid.runs().changed(changed), Progress.NONE);
    }

    @Test
    void layoutCostsWhatItCostsAsItIsLaid() {
        for (long seed = 1; seed <= 6; seed++) {
            HandedBuilding building = HandedBuilding.of(new RandomRooms(seed).room(), new Layings(), Progress.NONE);
            for (int wall = 0; wall < building.request().walls().size(); wall++) {
                LayingCost cost = LayingCost.of(building.result().walls().get(wall));
                RefitWall laid = laid(building, wall);

                assertThat(laid.cost()).isEqualTo(cost);
                assertThat(fitted(laid, building.request().walls().get(wall))).map(RefitWall::cost).contains(cost);
            }
        }
    }

    /** From 43 in the opening stands on the joints and nothing is cut; moved by 1/4 in, something is on either side. */
    @Test
    void openingMovedOffTheJointsNeedsCuts() {
        HandedBuilding building = HandedBuilding.of(opening("43"), new Layings(), Progress.NONE);
        WallFace moved = opening("43 1/4").walls().get(0);

        Optional<RefitWall> fitted = fitted(laid(building, 0), moved);

        assertThat(laid(building, 0).cost().cuts()).isZero();
        assertThat(fitted).hasValueSatisfying(wall -> {
            assertThat(wall.cost().cuts()).isGreaterThanOrEqualTo(building.runs(moved).bound().cuts()).isPositive();
            assertThat(wall.cost().unfillable()).isZero();
        });
    }

    @Test
    void openingMovedOntoTheJointsNeedsNone() {
        HandedBuilding building = HandedBuilding.of(opening("43 1/4"), new Layings(), Progress.NONE);

        assertThat(laid(building, 0).cost().cuts()).isPositive();
        assertThat(fitted(laid(building, 0), opening("43").walls().get(0))).map(RefitWall::cost)
                .contains(LayingCost.NONE);
    }

    /** 2 in before an opening: no piece is that short. The run stays open, and the rest is fitted. */
    @Test
    void runThatNothingFillsIsLeftOpen() {
        HandedBuilding building = HandedBuilding.of(opening("14"), new Layings(), Progress.NONE);
        WallFace moved = opening("2").walls().get(0);

        Optional<RefitWall> fitted = fitted(laid(building, 0), moved);

        assertThat(laid(building, 0).cost().unfillable()).isZero();
        assertThat(fitted).hasValueSatisfying(wall -> assertThat(wall.cost().unfillable()).isEqualTo(2));
    }

    /** What the other way round was left open is filled again. */
    @Test
    void runThatWasLeftOpenIsFilledWhenItCanBe() {
        HandedBuilding building = HandedBuilding.of(opening("2"), new Layings(), Progress.NONE);

        assertThat(laid(building, 0).cost().unfillable()).isEqualTo(2);
        assertThat(fitted(laid(building, 0), opening("14").walls().get(0)))
                .hasValueSatisfying(wall -> assertThat(wall.cost().unfillable()).isZero());
    }

    /** An opening up to the end of the wall leaves no run behind it, so there is nothing to fit. */
    @Test
    void wallOfOtherRunsIsNotFitted() {
        HandedBuilding building = HandedBuilding.of(opening("43"), new Layings(), Progress.NONE);

        assertThat(fitted(laid(building, 0), opening("100 1/2").walls().get(0))).isEmpty();
    }
}
