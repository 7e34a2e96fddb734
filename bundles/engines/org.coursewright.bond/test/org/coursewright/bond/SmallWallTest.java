package org.coursewright.bond;

import static org.assertj.core.api.Assertions.assertThat;
import static org.coursewright.bond.WallBuilder.in;
import static org.coursewright.bond.WallBuilder.rule;
import static org.coursewright.bond.WallBuilder.wall;

import java.util.List;

import org.coursewright.measure.Progress;
import org.junit.jupiter.api.Test;

/**
 * Walls of few runs whose best layout has several runs at once filled with more cuts than they need alone. How few short
 * laps and cuts are possible is what OR-Tools CP-SAT proves on the general model of the benchmarks (GeneralModel).
 */
class SmallWallTest {

    private static WallLayout lay(String length, int courses, String[] opening, String[] lintel) {
        PieceStock stock = new PieceStock(in("16"), List.of(in("8")), in("4"), in("1/4"), in("1/8"));
        WallFace wall = wall(length).stocked(stock).ruled(rule("4", "3/8", "1/2", "3/4")).courses(courses)
                .obstacle(Obstacle.Kind.OPENING, in(opening[0]), in(opening[1]), 1, 1)
                .obstacle(Obstacle.Kind.LINTEL, in(lintel[0]), in(lintel[1]), 2, 2).build();
        return BondSolver.standard().solve(new BondRequest(List.of(wall), List.of()), Progress.NONE).walls().get(0);
    }

    @Test
    void courseOverALintelIsCutSoThatAllLapsAreKept() {
        WallLayout layout = lay("48 3/4", 5, new String[]{"13 3/4", "28"}, new String[]{"7 3/4", "34"});

        assertThat(layout.lapViolations()).isZero();
        assertThat(layout.cutPieces()).isEqualTo(8);
        assertThat(layout.optimal()).isTrue();
    }

    @Test
    void fewestCutsAreFoundThoughFewFillingsHaveThem() {
        WallLayout layout = lay("49", 4, new String[]{"18 3/4", "32"}, new String[]{"12 3/4", "38"});

        assertThat(layout.lapViolations()).isZero();
        assertThat(layout.cutPieces()).isEqualTo(9);
        assertThat(layout.optimal()).isTrue();
    }
}
