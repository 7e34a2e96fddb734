package org.coursewright.bond;

import static org.assertj.core.api.Assertions.assertThat;
import static org.coursewright.bond.WallBuilder.in;
import static org.coursewright.bond.WallBuilder.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;

import org.coursewright.measure.Length;
import org.coursewright.measure.Progress;
import org.junit.jupiter.api.Test;

/** Walls whose bases and tops lie at different heights still take turns at their corner, course by course. */
class SteppedBaseTest {

    private static final Length HEIGHT = in("4 1/2");
    private static final Length LENGTH = in("101");

    private static WallBuilder standing(String mark, Levels levels) {
        List<Course> courses = IntStream.rangeClosed(levels.first(), levels.last())
                .mapToObj(level -> Course.level(level - levels.first() + 1, level,
                        HEIGHT.times((long) level - levels.first()), HEIGHT, LENGTH))
                .toList();
        return wall(LENGTH).mark(mark).courses(courses);
    }

    private static Meeting corner(String id, String one, String other) {
        return new Meeting(id, Meeting.Kind.CORNER, List.of(one, other), Optional.empty());
    }

    private static List<WallLayout> solve(List<WallFace> walls, List<Meeting> meetings) {
        BondResult result = BondSolver.standard().solve(new BondRequest(walls, meetings), Progress.NONE);
        for (int wall = 0; wall < walls.size(); wall++) {
            LayoutAudit.check(walls.get(wall), result.walls().get(wall));
        }
        return result.walls();
    }

    /** The run at the start, or the end, of the course of the building; empty if the wall has no such course. */
    private static Optional<Run> run(WallLayout wall, int level, boolean atEnd) {
        return wall.courses().stream().filter(course -> course.course().level() == level).findFirst()
                .map(course -> course.runs().get(atEnd ? course.runs().size() - 1 : 0));
    }

    private static boolean reachesOuterStart(Run run) {
        return run.startsWith() == RunEnd.FACE && run.from().equals(Length.ZERO);
    }

    private static boolean reachesOuterEnd(Run run) {
        return run.endsWith() == RunEnd.FACE && run.to().equals(LENGTH);
    }

    /**
     * A stands in courses 1 to 6 of the building, B on a grade beam two courses higher in 3 to 8. In 1 and 2 A goes to the
     * outer face, as nothing stands beside it; in 3 to 6 they take turns; in 7 and 8 B goes to the outer face.
     */
    @Test
    void wallsTakeTurnsOnlyWhereBothStand() {
        Levels low = new Levels(1, 6);
        Levels high = new Levels(3, 8);
        WallFace a = standing("A", low).end(new WallEnd.Corner("C", in("10"), high)).build();
        WallFace b = standing("B", high).start(new WallEnd.Corner("C", in("10"), low)).build();
        Meeting pinned = new Meeting("C", Meeting.Kind.CORNER, List.of("A", "B"), Optional.of("A"));

        List<WallLayout> walls = solve(List.of(a, b), List.of(pinned));

        assertThat(walls.get(0).courses()).extracting(course -> reachesOuterEnd(course.runs().get(0)))
                .containsExactly(true, true, true, false, true, false);
        assertThat(walls.get(1).courses()).extracting(course -> reachesOuterStart(course.runs().get(0)))
                .containsExactly(false, true, false, true, true, true);
        assertThat(walls.get(1).courses().get(0).runs().get(0).from()).isEqualTo(in("10"));
    }

    /** Whatever bases, tops and handing: in each course of the building exactly one wall fills each corner. */
    @Test
    void everyCornerIsFilledOnceInEveryCourse() {
        Random random = new Random(21);
        for (int building = 0; building < 25; building++) {
            List<Levels> levels = new ArrayList<>();
            for (int wall = 0; wall < 4; wall++) {
                int first = 1 + random.nextInt(4);
                levels.add(new Levels(first, first + 2 + random.nextInt(5)));
            }
            assertCornersFilled(levels, solve(ring(levels),
                    IntStream.range(0, 4).mapToObj(side -> corner("C" + side, "W" + (side + 3) % 4, "W" + side))
                            .toList()));
        }
    }

    /** Wall i goes from corner i to corner i + 1. */
    private static List<WallFace> ring(List<Levels> levels) {
        return IntStream.range(0, 4)
                .mapToObj(side -> standing("W" + side, levels.get(side))
                        .start(new WallEnd.Corner("C" + side, in("10"), levels.get((side + 3) % 4)))
                        .end(new WallEnd.Corner("C" + (side + 1) % 4, in("10"), levels.get((side + 1) % 4))).build())
                .toList();
    }

    private static void assertCornersFilled(List<Levels> levels, List<WallLayout> walls) {
        for (int side = 0; side < 4; side++) {
            for (int level = 1; level <= 12; level++) {
                Optional<Run> ending = run(walls.get((side + 3) % 4), level, true);
                Optional<Run> beginning = run(walls.get(side), level, false);
                long filling = ending.filter(SteppedBaseTest::reachesOuterEnd).stream().count()
                        + beginning.filter(SteppedBaseTest::reachesOuterStart).stream().count();
                assertThat(filling).as("corner %d, course %d of %s", side, level, levels)
                        .isEqualTo(ending.isPresent() || beginning.isPresent() ? 1 : 0);
            }
        }
    }
}
