package org.coursewright.bond.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.coursewright.bond.WallBuilder.in;
import static org.coursewright.bond.advice.AdviceCases.adjustables;
import static org.coursewright.bond.advice.AdviceCases.advise;

import java.util.List;
import java.util.Optional;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.BondResult;
import org.coursewright.bond.BondSolver;
import org.coursewright.bond.RandomRooms;
import org.coursewright.bond.internal.building.LayingCost;
import org.coursewright.measure.Progress;
import org.junit.jupiter.api.Test;

/** What is promised for rooms, whose walls share their corners. */
class RoomAdviceTest {

    private static final List<Long> SEEDS = List.of(2L, 3L, 6L);

    @Test
    void whatIsPromisedForARoomComesTrue() {
        for (long seed : SEEDS) {
            BondRequest room = new RandomRooms(seed).room();
            Advice advice = advise(room, adjustables(room), Optional.of(in("4")));

            assertThat(BondSolver.standard().solve(advice.changed(), Progress.NONE)).isEqualTo(advice.after());
            assertThat(advice.movement()).isLessThanOrEqualTo(in("4"));
            assertThat(spared(advice)).isGreaterThanOrEqualTo(0);
            advice.profiles().forEach(profile -> checkProfile(profile));
        }
    }

    private static int spared(Advice advice) {
        int laps = advice.before().lapViolations() - advice.after().lapViolations();
        return laps == 0 ? advice.before().cutPieces() - advice.after().cutPieces() : laps;
    }

    private static void checkProfile(DimensionProfile profile) {
        assertThat(profile.points()).anySatisfy(point -> {
            assertThat(point.change()).isEqualTo(profile.best());
            assertThat(point.basis()).isNotEqualTo(ProfilePoint.Basis.BOUND);
        });
    }

    /** What may change more can spare no less: every value of the smaller tolerance is one of the greater. */
    @Test
    void moreToleranceNeverAddsCuts() {
        for (long seed : SEEDS) {
            BondRequest room = new RandomRooms(seed).room();
            LayingCost least = cost(BondSolver.standard().solve(room, Progress.NONE));
            for (String tolerance : List.of("1/4", "1", "2")) {
                List<Adjustable> wider = adjustables(room).stream()
                        .map(each -> Adjustable.within(each.wall(), each.opening(), each.dimension(), in(tolerance)))
                        .toList();
                LayingCost cost = cost(advise(room, wider, Optional.empty()).after());
                assertThat(cost).isLessThanOrEqualTo(least);
                least = cost;
            }
        }
    }

    private static LayingCost cost(BondResult laid) {
        return laid.walls().stream().map(LayingCost::of).reduce(LayingCost.NONE, LayingCost::plus);
    }
}
