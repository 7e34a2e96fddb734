package org.coursewright.bond;

import static org.assertj.core.api.Assertions.assertThat;
import static org.coursewright.bond.WallBuilder.in;
import static org.coursewright.bond.WallBuilder.mm;
import static org.coursewright.bond.WallBuilder.rule;
import static org.coursewright.bond.WallBuilder.stock;
import static org.coursewright.bond.WallBuilder.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.coursewright.measure.Length;
import org.coursewright.measure.Progress;
import org.junit.jupiter.api.Test;

/** Corners and tees, worked by hand. */
class CornerTest {

    private static BondResult solve(List<WallFace> walls, List<Meeting> meetings) {
        BondResult result = BondSolver.standard().solve(new BondRequest(walls, meetings), Progress.NONE);
        for (int wall = 0; wall < walls.size(); wall++) {
            LayoutAudit.check(walls.get(wall), result.walls().get(wall));
        }
        return result;
    }

    private static Meeting corner(String id, String... walls) {
        return new Meeting(id, Meeting.Kind.CORNER, List.of(walls), Optional.empty());
    }

    /** A closed room of four walls of equal length, each from corner i to corner i + 1. */
    private static List<WallFace> room(Length length, Length thickness, PieceStock stock, JointRule rule) {
        List<WallFace> walls = new ArrayList<>();
        for (int side = 0; side < 4; side++) {
            walls.add(wall(length).mark("W" + side).stocked(stock).ruled(rule).courses(6)
                    .start(new WallEnd.Corner("C" + side, thickness))
                    .end(new WallEnd.Corner("C" + (side + 1) % 4, thickness)).build());
        }
        return walls;
    }

    private static List<Meeting> corners() {
        return List.of(corner("C0", "W0", "W3"), corner("C1", "W0", "W1"), corner("C2", "W1", "W2"),
                corner("C3", "W2", "W3"));
    }

    private static boolean beginsWithFace(WallLayout wall, int course) {
        return wall.courses().get(course).runs().get(0).startsWith() == RunEnd.FACE;
    }

    private static boolean endsWithFace(WallLayout wall, int course) {
        List<Run> runs = wall.courses().get(course).runs();
        return runs.get(runs.size() - 1).endsWith() == RunEnd.FACE;
    }

    /** Common practice, no source: a unit 14 in long and 10 in wide turns a corner with a 4 in offset and no cut. */
    @Test
    void fourteenByTenUnitTurnsCornersWithoutCut() {
        Length side = in("14 1/2").times(9).plus(in("10"));
        BondResult result = solve(room(side, in("10"), stock("14"), rule("3 1/2", "1/2", "1/2", "1/2")), corners());

        assertThat(result.walls()).allSatisfy(wall -> {
            assertThat(wall.cutPieces()).isZero();
            assertThat(wall.lapViolations()).isZero();
            assertThat(wall.optimal()).isTrue();
        });
    }

    /** The lap at that corner is 14 - (10 + 1/2) = 3 1/2 in, 25.0 % of the unit: a hair more cannot be kept. */
    @Test
    void lapAtThatCornerIsExactlyThreeAndAHalfInches() {
        Length side = in("14 1/2").times(9).plus(in("10"));
        BondResult result = solve(room(side, in("10"), stock("14"), rule("3 33/64", "1/2", "1/2", "1/2")), corners());

        assertThat(result.walls()).allMatch(wall -> wall.lapViolations() > 0 || wall.cutPieces() > 0);
    }

    /** L = 2 t + j gives half bond: the unit laps 290 - (140 + 10) = 140 mm and nothing is cut. */
    @Test
    void unitTwiceAsLongAsWideAndAJointTurnsCornersInHalfBond() {
        PieceStock metric = new PieceStock(mm(290), List.of(), mm(65), mm(5), mm(4));
        JointRule rule = new JointRule(mm(140), mm(10), mm(10), mm(10));
        BondResult result = solve(room(mm(300 * 12 + 140), mm(140), metric, rule), corners());

        assertThat(result.walls()).allSatisfy(wall -> {
            assertThat(wall.cutPieces()).isZero();
            assertThat(wall.lapViolations()).isZero();
        });
    }

    @Test
    void roundAClosedLoopWallsRunThroughAtOneEndInOddCoursesAndAtTheOtherInEven() {
        BondResult result = solve(
                room(in("140 1/2"), in("10"), stock("14"), rule("3 1/2", "3/8", "1/2", "3/4")), corners());

        assertThat(result.walls()).allSatisfy(wall -> {
            assertThat(beginsWithFace(wall, 0)).isNotEqualTo(endsWithFace(wall, 0));
            assertThat(beginsWithFace(wall, 0)).isEqualTo(endsWithFace(wall, 1));
            assertThat(beginsWithFace(wall, 1)).isNotEqualTo(beginsWithFace(wall, 0));
        });
        assertThat(result.throughOnOdd()).containsOnlyKeys("C0", "C1", "C2", "C3");
    }

    @Test
    void pinnedHandingIsKept() {
        List<Meeting> meetings = new ArrayList<>(corners());
        meetings.set(1, new Meeting("C1", Meeting.Kind.CORNER, List.of("W0", "W1"), Optional.of("W1")));
        BondResult result = solve(
                room(in("140 1/2"), in("10"), stock("14"), rule("3 1/2", "3/8", "1/2", "3/4")), meetings);

        assertThat(result.throughOnOdd()).isEqualTo(Map.of("C0", "W0", "C1", "W1", "C2", "W2", "C3", "W3"));
        assertThat(beginsWithFace(result.walls().get(1), 0)).isTrue();
    }

    /** A wall tied to another ends with a straight joint, course upon course: that is a decision, not a violation. */
    @Test
    void tiedEndIsAStraightJointAndNothingElseSuffersForIt() {
        BondResult result = solve(List.of(wall("144 1/2").stocked(stock("14", "6 3/4")).courses(5)
                .end(new WallEnd.Tied()).build()), List.of());

        assertThat(result.walls().get(0).lapViolations()).isZero();
        assertThat(result.walls().get(0).straightJoints()).isEqualTo(4);
        assertThat(result.walls().get(0).cutPieces()).isZero();
        assertThat(result.walls().get(0).optimal()).isTrue();
    }

    @Test
    void thirdWallAtACornerNeverRunsThrough() {
        List<WallFace> walls = List.of(wall("101").mark("A").end(new WallEnd.Corner("C", in("10"))).build(),
                wall("101").mark("B").start(new WallEnd.Corner("C", in("10"))).build(),
                wall("101").mark("D").start(new WallEnd.Corner("C", in("10"))).build());
        BondResult result = solve(walls, List.of(corner("C", "A", "B", "D")));

        assertThat(result.walls().get(2).courses()).allMatch(
                course -> course.runs().get(0).from().equals(in("10"))
                        && course.runs().get(0).startsWith() == RunEnd.JOINT);
    }

    /** The wall that ends reaches through in its courses and interrupts the other only there. */
    @Test
    void bondedTeeTakesTurns() {
        List<WallFace> walls = List.of(
                wall("101").mark("A").courses(4).end(new WallEnd.Bonded("T", in("10"))).build(),
                wall("202 1/2").mark("B").courses(4).tee("T", in("98"), in("108")).build());
        BondResult result = solve(walls,
                List.of(new Meeting("T", Meeting.Kind.TEE, List.of("A", "B"), Optional.of("A"))));

        List<CourseLayout> ending = result.walls().get(0).courses();
        List<CourseLayout> passing = result.walls().get(1).courses();
        assertThat(ending).extracting(course -> course.runs().get(0).to()).containsExactly(in("111"), in("101"),
                in("111"), in("101"));
        assertThat(ending).extracting(course -> course.runs().get(0).endsWith()).containsExactly(RunEnd.FACE,
                RunEnd.JOINT, RunEnd.FACE, RunEnd.JOINT);
        assertThat(passing).extracting(course -> course.runs().size()).containsExactly(2, 1, 2, 1);
        assertThat(passing.get(0).runs().get(0).endsWith()).isEqualTo(RunEnd.JOINT);
    }

    /** Courses of the building decide, so a wall that begins one course higher takes its turn with its neighbours. */
    @Test
    void wallsWithBasesAtDifferentHeightsTakeTurnsByCoursesOfTheBuilding() {
        Length length = in("101");
        Length height = in("4 1/2");
        WallFace high = wall(length).mark("B").start(new WallEnd.Corner("C", in("10")))
                .courses(List.of(Course.level(1, 2, Length.ZERO, height, length),
                        Course.level(2, 3, height, height, length)))
                .build();
        WallFace low = wall(length).mark("A").courses(3).end(new WallEnd.Corner("C", in("10"))).build();
        BondResult result = solve(List.of(low, high), List.of(corner("C", "A", "B")));

        assertThat(endsWithFace(result.walls().get(0), 0)).isTrue();
        assertThat(beginsWithFace(result.walls().get(1), 0)).isTrue();
        assertThat(beginsWithFace(result.walls().get(1), 1)).isFalse();
    }
}
