package org.coursewright.bond;

import static org.assertj.core.api.Assertions.assertThat;
import static org.coursewright.bond.WallBuilder.in;
import static org.coursewright.bond.WallBuilder.rule;
import static org.coursewright.bond.WallBuilder.wall;

import java.util.List;
import java.util.Optional;

import org.coursewright.measure.Progress;
import org.junit.jupiter.api.Test;

/** Why pieces are cut, worked by hand. */
class CutReasonsTest {

    private static List<CutReason> reasons(BondRequest request) {
        BondResult result = BondSolver.standard().solve(request, Progress.NONE);
        for (int wall = 0; wall < request.walls().size(); wall++) {
            LayoutAudit.checkReasons(request, result, wall);
        }
        return new CutReasons(request, result).of(0);
    }

    private static NearestLengths nearest(String shorter, String longer) {
        return new NearestLengths(Optional.of(in(shorter)), Optional.of(in(longer)));
    }

    private static RunBound.Interrupted interrupted(WallFace wall, int obstacle) {
        return new RunBound.Interrupted(wall.obstacles().get(obstacle));
    }

    @Test
    void wallWithoutCutsNeedsNoReason() {
        assertThat(reasons(wall("144 1/2").courses(1).alone())).isEmpty();
    }

    /** 15 in are too long for a unit and too short for a unit and a piece: two cuts; 14 in or 14 + 3/8 + 3 1/2 need fewer. */
    @Test
    void shortPierBetweenTwoOpeningsIsToBlame() {
        BondRequest request = wall("144").courses(1).obstacle(Obstacle.Kind.OPENING, in("43 1/2"), in("72"), 1, 1)
                .obstacle(Obstacle.Kind.OPENING, in("87"), in("101"), 1, 1).alone();

        WallFace wall = request.walls().get(0);
        assertThat(reasons(request)).filteredOn(reason -> reason.from().equals(in("72"))).singleElement()
                .isEqualTo(new CutReason(1, in("72"), in("87"), interrupted(wall, 0), interrupted(wall, 1),
                        List.of(new CutCause.RunLength(2, nearest("14", "17 7/8")))));
    }

    /** Whole units alone would stand joint on joint: the cuts of every second course are there for the laps alone. */
    @Test
    void cutsThatOnlyKeepTheLapsSaySo() {
        List<CutReason> reasons = reasons(wall("144 1/2").courses(4).alone());

        assertThat(reasons).flatExtracting(CutReason::causes).isNotEmpty()
                .allMatch(cause -> cause instanceof CutCause.Lap lap && lap.proven()
                        && lap.askedBy() != CutCause.Neighbours.UNDECIDED);
        assertThat(reasons).allMatch(reason -> reason.start().equals(new RunBound.Free()));
    }

    /** Ten whole units in course 1; in course 2 joints would stand on joints if the course were not cut. */
    @Test
    void courseThatAsksForTheCutsIsNamed() {
        assertThat(reasons(wall("144 1/2").alone())).singleElement().satisfies(reason -> assertThat(reason.causes())
                .containsExactly(new CutCause.Lap(2, reason.course() == 1
                        ? CutCause.Neighbours.ABOVE
                        : CutCause.Neighbours.BELOW, true)));
    }

    /** Up to the side of the other wall lie 5 units and 5 joints; through to the outer face 10 in more, not filled whole. */
    @Test
    void turnAtACornerIsToBlameIfTheOtherTurnWouldSpareTheCut() {
        WallFace wall = wall("82 1/2").ruled(rule("3 1/2", "1/2", "1/2", "1/2")).courses(1)
                .end(new WallEnd.Corner("C", in("10"))).build();
        WallFace other = wall("82 1/2").mark("W2").courses(1).start(new WallEnd.Corner("C", in("10"))).build();
        Meeting corner = new Meeting("C", Meeting.Kind.CORNER, List.of("W1", "W2"), Optional.of("W1"));

        assertThat(reasons(new BondRequest(List.of(wall, other), List.of(corner)))).singleElement()
                .satisfies(reason -> {
                    assertThat(reason.end()).isEqualTo(new RunBound.Corner("C", true));
                    assertThat(reason.causes()).containsExactly(new CutCause.Turn(1, "C", nearest("72", "86 1/2")));
                });
    }

    /** Joints of exactly 1/2 in leave 13 1/2 in of 144 in to be cut, which free joints would not. */
    @Test
    void pinnedJointIsToBlameForTheCutItTakes() {
        BondRequest request = wall("144").courses(1).pinned(new Pin.OfJoint(1, in("20"), in("1/2"))).alone();

        assertThat(reasons(request)).singleElement()
                .satisfies(reason -> assertThat(reason.causes()).containsExactly(new CutCause.Pinned(1)));
    }

    @Test
    void piecesUnderAGableAreCutForTheRake() {
        List<CutReason> reasons = reasons(new RandomWalls(1).gable("300", "9"));

        assertThat(reasons).filteredOn(reason -> reason.start() instanceof RunBound.Raked).isNotEmpty()
                .allSatisfy(reason -> assertThat(reason.causes().get(0))
                        .isInstanceOfSatisfying(CutCause.Rake.class, rake -> assertThat(rake.cuts()).isPositive()));
    }
}
