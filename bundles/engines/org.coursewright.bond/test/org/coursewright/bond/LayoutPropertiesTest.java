package org.coursewright.bond;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;

import org.coursewright.measure.Progress;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What holds for every layout. */
class LayoutPropertiesTest {

    private static final int WALLS = 60;

    private static BondResult solve(BondRequest request) {
        return BondSolver.standard().solve(request, Progress.NONE);
    }

    @Test
    void everyRunAddsUpAndEveryCountIsRecomputedEqual() {
        RandomWalls walls = new RandomWalls(11);
        for (int index = 0; index < WALLS; index++) {
            BondRequest request = walls.wall("40", "400", 20, 4);
            BondResult result = solve(request);
            LayoutAudit.check(request.walls().get(0), result.walls().get(0));
            LayoutAudit.checkReasons(request, result, 0);
        }
    }

    @Test
    void sameRequestGivesTheSameLayout() {
        RandomWalls walls = new RandomWalls(12);
        for (int index = 0; index < 10; index++) {
            BondRequest request = walls.wall("40", "300", 12, 3);
            assertThat(solve(request)).isEqualTo(solve(request));
        }
    }

    @Test
    void mirrorImageOfAProvenWallCostsTheSame() {
        RandomWalls walls = new RandomWalls(13);
        int proven = 0;
        for (int index = 0; index < WALLS; index++) {
            BondRequest request = walls.wall("40", "200", 10, 2);
            WallLayout layout = solve(request).walls().get(0);
            WallLayout mirrored = solve(RandomWalls.mirrored(request)).walls().get(0);
            if (layout.optimal() && mirrored.optimal()) {
                proven++;
                assertThat(mirrored.cutPieces()).isEqualTo(layout.cutPieces());
                assertThat(mirrored.lapViolations()).isEqualTo(layout.lapViolations());
            }
            if (layout.lapViolations() == mirrored.lapViolations()) {
                assertThat(mirrored.lowerBound()).isLessThanOrEqualTo(layout.cutPieces());
                assertThat(layout.lowerBound()).isLessThanOrEqualTo(mirrored.cutPieces());
            }
            assertThat(mirrored.unfillable()).hasSameSizeAs(layout.unfillable());
        }
        assertThat(proven).isPositive();
    }

    /** Whatever a narrow range of joints allows a wider one allows too. */
    @Test
    void widerRangeOfJointsNeverAddsCutsOrShortLaps() {
        RandomWalls walls = new RandomWalls(15);
        int compared = 0;
        for (int index = 0; index < WALLS; index++) {
            BondRequest request = walls.wall("40", "200", 10, 2);
            WallLayout narrow = solve(request).walls().get(0);
            WallLayout wide = solve(RandomWalls.widened(request)).walls().get(0);
            assertThat(wide.unfillable().size()).isLessThanOrEqualTo(narrow.unfillable().size());
            if (wide.unfillable().equals(narrow.unfillable()) && narrow.optimal() && wide.optimal()) {
                compared++;
                assertThat(wide.lapViolations()).isLessThanOrEqualTo(narrow.lapViolations());
                assertThat(wide.cutPieces()).isLessThanOrEqualTo(narrow.cutPieces());
            }
        }
        assertThat(compared).isGreaterThan(WALLS / 3);
    }

    @ParameterizedTest
    @CsvSource({"300, 9", "317, 18", "260, 4"})
    void everyPieceUnderTheRakeOfAGableIsCut(String base, String slope) {
        BondRequest request = new RandomWalls(1).gable(base, slope);
        WallFace wall = request.walls().get(0);
        WallLayout layout = solve(request).walls().get(0);

        LayoutAudit.check(wall, layout);
        assertThat(layout.unfillable()).isEmpty();
        for (CourseLayout course : layout.courses().subList(4, layout.courses().size())) {
            Run run = course.runs().get(0);
            assertThat(run.startsWith()).isEqualTo(RunEnd.RAKE);
            assertThat(run.pieces().get(0).kind()).isEqualTo(Piece.Kind.CUT);
            assertThat(run.pieces().get(run.pieces().size() - 1).kind()).isEqualTo(Piece.Kind.CUT);
        }
    }

    @Test
    void cancelledWorkEndsAtOnce() {
        BondRequest request = new RandomWalls(14).wall("400", "400", 20, 4);
        AtomicInteger asked = new AtomicInteger();
        Progress progress = new Progress() {
            @Override
            public void done(double fraction) {
                assertThat(fraction).isBetween(0.0, 1.0);
            }

            @Override
            public boolean isCancelled() {
                return asked.incrementAndGet() > 20;
            }
        };

        assertThatThrownBy(() -> BondSolver.standard().solve(request, progress))
                .isInstanceOf(CancellationException.class);
        assertThat(asked.get()).isEqualTo(21);
    }
}
