package org.coursewright.bond;

import static org.assertj.core.api.Assertions.assertThat;
import static org.coursewright.bond.WallBuilder.in;
import static org.coursewright.bond.WallBuilder.mm;
import static org.coursewright.bond.WallBuilder.rule;
import static org.coursewright.bond.WallBuilder.stock;
import static org.coursewright.bond.WallBuilder.wall;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

import org.coursewright.measure.Length;
import org.coursewright.measure.Progress;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Walls small enough to work out by hand; coursing identities of modular masonry as in BIA Technical Note 10. */
class HandWorkedWallsTest {

    private static final PieceStock METRIC = new PieceStock(mm(290), List.of(), mm(65), mm(5), mm(4));
    private static final JointRule METRIC_RULE = new JointRule(mm(70), mm(7), mm(10), mm(15));

    private static WallLayout lay(WallBuilder wall) {
        WallLayout layout = BondSolver.standard().solve(wall.alone(), Progress.NONE).walls().get(0);
        LayoutAudit.check(wall.build(), layout);
        return layout;
    }

    private static Run onlyRun(WallLayout layout) {
        return layout.courses().get(0).runs().get(0);
    }

    /** n units and n - 1 joints: 10 of 14 in with half-inch joints are 144 1/2 in. */
    @ParameterizedTest
    @CsvSource({"1, 14", "2, 28 1/2", "10, 144 1/2", "24, 347 1/2"})
    void freeWallOfWholeUnitsNeedsNoCut(int units, String length) {
        WallLayout layout = lay(wall(length).courses(1));

        assertThat(onlyRun(layout).pieces()).hasSize(units).allMatch(piece -> piece.kind() == Piece.Kind.WHOLE);
        assertThat(onlyRun(layout).joint().map(joint -> joint.toMillimetres()))
                .isEqualTo(units == 1 ? Optional.empty() : Optional.of(new BigDecimal("12.7")));
        assertThat(layout.cutPieces()).isZero();
        assertThat(layout.optimal()).isTrue();
    }

    /** 10 units of 290 mm and 9 joints of 10 mm are 2990 mm. */
    @Test
    void freeMetricWallOfWholeUnitsNeedsNoCut() {
        WallLayout layout = lay(wall(mm(2990)).stocked(METRIC).ruled(METRIC_RULE).courses(1));

        assertThat(onlyRun(layout).pieces()).hasSize(10);
        assertThat(layout.cutPieces()).isZero();
    }

    /** X = 144 in, n = 10, L = 14 in: each joint is (144 - 140) / 9 = 4/9 in = 11.288889 mm. */
    @Test
    void jointTakesUpWhatTheUnitsLeave() {
        Run run = onlyRun(lay(wall("144").courses(1)));

        assertThat(run.joint().map(joint -> joint.toMillimetres())).contains(new BigDecimal("11.288889"));
        assertThat(run.jointCount()).isEqualTo(9);
    }

    /** Between two walls n units need n + 1 joints; with one end free, n. 8 x 14 1/2 in are 116 in. */
    @Test
    void buttedRunsCountTheirEndJoints() {
        Run one = onlyRun(lay(wall("116").courses(1).start(new WallEnd.Tied())));
        Run both = onlyRun(lay(wall("116 1/2").courses(1).start(new WallEnd.Tied()).end(new WallEnd.Tied())));

        assertThat(List.of(one.jointCount(), both.jointCount())).containsExactly(8, 9);
        assertThat(List.of(one, both)).allSatisfy(run -> {
            assertThat(run.pieces()).hasSize(8);
            assertThat(run.joint().map(joint -> joint.toMillimetres())).contains(new BigDecimal("12.7"));
        });
    }

    /** An opening as wide as n modules and a joint takes n units out of the course: 6 x 14 1/2 + 1/2 = 87 1/2 in. */
    @Test
    void openingOnTheModuleNeedsNoCut() {
        WallLayout layout = lay(
                wall("231 1/2").courses(1).obstacle(Obstacle.Kind.OPENING, in("72 1/2").minus(in("1/2")),
                        in("72").plus(in("87 1/2")), 1, 1));

        assertThat(layout.courses().get(0).runs()).extracting(run -> run.pieces().size()).containsExactly(5, 5);
        assertThat(layout.cutPieces()).isZero();
    }

    /**
     * With both ends free and no halves in stock every second course must begin otherwise than with a whole unit, and
     * end so: two cuts for every two courses, no fewer.
     */
    @Test
    void freeEndsWithoutHalvesNeedTwoCutsInTwoCourses() {
        WallLayout layout = lay(wall("144 1/2").courses(4));

        assertThat(layout.lapViolations()).isZero();
        assertThat(layout.cutPieces()).isEqualTo(4);
    }

    /** Half units of 6 3/4 in begin and end every second course: M/2 - j. */
    @Test
    void stockedHalvesSpareTheCutsAtFreeEnds() {
        WallLayout layout = lay(wall("144 1/2").stocked(stock("14", "6 3/4")).courses(5));

        assertThat(layout.lapViolations()).isZero();
        assertThat(layout.cutPieces()).isZero();
        assertThat(layout.optimal()).isTrue();
    }

    /** At 14 1/4 in neither one unit nor two pieces of at least 3 1/2 in on the quarter inch make up the length. */
    @Test
    void runThatNothingFillsIsListedWithWhatWouldFillIt() {
        WallLayout layout = lay(
                wall("14 1/4").stocked(new PieceStock(in("14"), List.of(), in("7"), in("1/4"), in("1/8")))
                        .courses(1));

        assertThat(layout.courses().get(0).runs()).isEmpty();
        assertThat(layout.unfillable()).singleElement().satisfies(run -> {
            assertThat(run.length()).isEqualTo(in("14 1/4"));
            assertThat(run.reason()).isEqualTo(new UnfillableReason.NothingAddsUp(in("3/8"), in("3/4")));
            assertThat(run.nearest())
                    .isEqualTo(new NearestLengths(Optional.of(in("14")), Optional.of(in("14 3/8"))));
        });
    }

    @Test
    void pierShorterThanTheShortestPieceIsListedAndTheRestIsLaid() {
        WallLayout layout = lay(
                wall("144 1/2").courses(1).obstacle(Obstacle.Kind.OPENING, in("3"), in("43 1/2"), 1, 1));

        assertThat(layout.unfillable()).singleElement()
                .satisfies(run -> assertThat(run.reason())
                        .isEqualTo(new UnfillableReason.TooShort(in("3 1/2"), Length.ZERO)));
        assertThat(layout.courses().get(0).runs()).hasSize(1);
    }

    @Test
    void openingAsWideAsItsWallLeavesNothingToLay() {
        WallLayout layout = lay(wall("100").courses(2).obstacle(Obstacle.Kind.OPENING, in("0"), in("100"), 1, 2));

        assertThat(layout.courses()).allMatch(course -> course.runs().isEmpty());
        assertThat(layout.unfillable()).isEmpty();
    }

    @Test
    void widestJointsAreNotExceeded() {
        WallLayout layout = lay(wall("29 1/4").courses(1).ruled(rule("3 1/2", "3/8", "1/2", "3/4")));

        assertThat(onlyRun(layout).joint().map(joint -> joint.isWithin(in("3/8"), in("3/4")))).contains(true);
        assertThat(layout.cutPieces()).isEqualTo(2);
        assertThat(onlyRun(layout).length()).isEqualTo(Length.ofInches(29).plus(in("1/4")));
    }
}
