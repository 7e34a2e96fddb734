package org.coursewright.bond;

import static org.assertj.core.api.Assertions.assertThat;
import static org.coursewright.bond.WallBuilder.in;
import static org.coursewright.bond.WallBuilder.wall;

import java.util.List;

import org.coursewright.measure.Length;
import org.coursewright.measure.LengthRatio;
import org.coursewright.measure.Progress;
import org.junit.jupiter.api.Test;

/** Places of short laps, worked by hand. */
class ShortLapTest {

    /** Units that may not be cut. */
    private static final PieceStock WHOLE_ONLY = new PieceStock(in("14"), List.of(), in("14"), in("1/4"), in("1/8"));

    private static WallLayout lay(WallBuilder wall) {
        WallFace face = wall.build();
        BondResult result = BondSolver.standard().solve(new BondRequest(List.of(face), List.of()), Progress.NONE);
        LayoutAudit.check(face, result.walls().get(0));
        return result.walls().get(0);
    }

    private static Course course(int number, String to) {
        Length height = in("4 1/2");
        return new Course(number, number, height.times(number - 1L), height, Length.ZERO, in(to), Length.ZERO, in(to));
    }

    /** Ten units and nine joints of 1/2 in fill 144 1/2 in; without a half unit joint stands over joint. */
    @Test
    void jointsOverJointsOverlapByTheirWidth() {
        WallLayout layout = lay(wall("144 1/2").stocked(WHOLE_ONLY));

        assertThat(layout.lapViolations()).isEqualTo(9);
        assertThat(layout.shortLaps()).extracting(ShortLap::at).startsWith(in("14 1/4"), in("28 3/4"))
                .endsWith(in("130 1/4"));
        assertThat(layout.shortLaps()).allSatisfy(lap -> {
            assertThat(List.of(lap.lower(), lap.upper())).containsExactly(1, 2);
            assertThat(lap.lap()).isEqualByComparingTo(new LengthRatio(in("1/2").times(-1), 1));
            assertThat(lap.least()).isEqualTo(in("3 1/2"));
        });
    }

    /**
     * Four units fill 58 in below with three joints of 2/3 in and 57 1/2 in above with three of 1/2 in. Joints below end
     * 1/2, 1/3 and 1/6 in after those above begin, or those above after those below.
     */
    @Test
    void lapsAreExactFractions() {
        WallLayout layout = lay(wall("58").stocked(WHOLE_ONLY).courses(List.of(course(1, "58"), course(2, "57 1/2"))));

        assertThat(layout.shortLaps()).hasSize(3);
        for (int lap = 0; lap < 3; lap++) {
            assertThat(layout.shortLaps().get(lap).lap())
                    .isEqualByComparingTo(new LengthRatio(in("1/2").times(lap - 3L), 3));
        }
    }
}
