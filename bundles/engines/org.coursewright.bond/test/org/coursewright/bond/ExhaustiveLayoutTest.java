package org.coursewright.bond;

import static org.assertj.core.api.Assertions.assertThat;
import static org.coursewright.bond.WallBuilder.in;
import static org.coursewright.bond.WallBuilder.rule;
import static org.coursewright.bond.WallBuilder.wall;

import java.util.List;
import java.util.Random;

import org.coursewright.bond.ExhaustiveLayout.Cost;
import org.coursewright.measure.Length;
import org.coursewright.measure.Progress;
import org.junit.jupiter.api.Test;

/** The engine against trying everything, on walls of a few pieces. */
class ExhaustiveLayoutTest {

    private static final int WALLS = 150;

    private static WallBuilder tiny(Random random) {
        Length length = in("1/2").times(44 + random.nextInt(44));
        int courses = 2 + random.nextInt(3);
        List<Length> specials = random.nextInt(3) == 0 ? List.of(in("6 3/4")) : List.of();
        WallBuilder wall = wall(length).courses(courses)
                .stocked(new PieceStock(in("14"), specials, in("5"), in("3"), in("1/8")))
                .ruled(rule("3 1/2", "3/8", "1/2", "3/4")).start(end(random)).end(end(random));
        if (random.nextInt(3) == 0) {
            Length from = in("1/2").times(10 + random.nextInt(30));
            Obstacle.Kind kind = random.nextBoolean() ? Obstacle.Kind.OPENING : Obstacle.Kind.LINTEL;
            wall.obstacle(kind, from, from.plus(in("12")), 2, courses);
        }
        return wall;
    }

    private static WallEnd end(Random random) {
        return random.nextInt(3) == 0 ? new WallEnd.Tied() : new WallEnd.Free();
    }

    @Test
    void provenLayoutsAreAsGoodAsAnyAndNoneBeatsItsBound() {
        Random random = new Random(5);
        int proven = 0;
        int best = 0;
        for (int index = 0; index < WALLS; index++) {
            WallBuilder wall = tiny(random);
            WallLayout layout = BondSolver.standard().solve(wall.alone(), Progress.NONE).walls().get(0);
            Cost least = new ExhaustiveLayout(wall.build()).least(layout);
            Cost found = new Cost(layout.lapViolations() + layout.straightJoints(), layout.cutPieces());

            assertThat(least).as("wall %s", index).isLessThanOrEqualTo(found);
            if (layout.optimal()) {
                proven++;
                assertThat(found).as("wall %s", index).isEqualTo(least);
            }
            if (least.violations() == found.violations()) {
                assertThat(layout.lowerBound()).as("wall %s", index).isLessThanOrEqualTo(least.cuts());
            }
            best += found.equals(least) ? 1 : 0;
        }
        assertThat(proven).isGreaterThan(WALLS / 2);
        assertThat(best).isGreaterThan(WALLS * 9 / 10);
    }
}
