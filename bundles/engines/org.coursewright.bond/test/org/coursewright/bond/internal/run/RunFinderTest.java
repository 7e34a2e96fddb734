package org.coursewright.bond.internal.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.coursewright.bond.WallBuilder.in;
import static org.coursewright.bond.WallBuilder.wall;

import java.util.List;
import java.util.Map;

import org.coursewright.bond.Course;
import org.coursewright.bond.Obstacle;
import org.coursewright.bond.RunEnd;
import org.coursewright.bond.WallBuilder;
import org.coursewright.bond.WallEnd;
import org.coursewright.bond.internal.handing.Handing;
import org.coursewright.measure.Length;
import org.junit.jupiter.api.Test;

/** Runs between ends and obstacles, worked by hand. */
class RunFinderTest {

    private record Found(Length from, Length to, RunEnd start, RunEnd end) {
    }

    private static List<Found> first(WallBuilder wall) {
        return new RunFinder(wall.build(), new Handing(List.of(), Map.of())).find().get(0).stream()
                .map(run -> new Found(Length.ofUnits(run.from()), Length.ofUnits(run.to()), run.start(), run.end()))
                .toList();
    }

    private static Found found(String from, RunEnd start, String to, RunEnd end) {
        return new Found(in(from), in(to), start, end);
    }

    @Test
    void freeWallIsOneRunFromFaceToFace() {
        assertThat(first(wall("100"))).containsExactly(found("0", RunEnd.FACE, "100", RunEnd.FACE));
    }

    @Test
    void openingSplitsACourseIntoRunsWithJambs() {
        assertThat(first(wall("100").obstacle(Obstacle.Kind.OPENING, in("30"), in("60"), 1, 1))).containsExactly(
                found("0", RunEnd.FACE, "30", RunEnd.FACE), found("60", RunEnd.FACE, "100", RunEnd.FACE));
    }

    @Test
    void obstacleOfOtherCoursesDoesNotCount() {
        assertThat(first(wall("100").obstacle(Obstacle.Kind.OPENING, in("30"), in("60"), 2, 2))).hasSize(1);
    }

    /** The run before ends at the opening's jamb, the one after begins with a joint at the other opening's lintel. */
    @Test
    void openingBesideABearingLeavesNoRunBetweenThem() {
        assertThat(first(wall("100").obstacle(Obstacle.Kind.LINTEL, in("50"), in("80"), 1, 1)
                .obstacle(Obstacle.Kind.OPENING, in("20"), in("50"), 1, 1))).containsExactly(
                        found("0", RunEnd.FACE, "20", RunEnd.FACE), found("80", RunEnd.JOINT, "100", RunEnd.FACE));
    }

    @Test
    void overlappingObstaclesAreOneAndTheOuterOnesDecide() {
        assertThat(first(wall("100").obstacle(Obstacle.Kind.LINTEL, in("20"), in("60"), 1, 1)
                .obstacle(Obstacle.Kind.OPENING, in("30"), in("70"), 1, 1)
                .obstacle(Obstacle.Kind.OPENING, in("35"), in("40"), 1, 1))).containsExactly(
                        found("0", RunEnd.FACE, "20", RunEnd.JOINT), found("70", RunEnd.FACE, "100", RunEnd.FACE));
    }

    @Test
    void obstaclesTouchingTheEndsOfTheWallTakeTheirPlace() {
        assertThat(first(wall("100").obstacle(Obstacle.Kind.OPENING, in("0"), in("20"), 1, 1)
                .obstacle(Obstacle.Kind.LINTEL, in("90"), in("110"), 1, 1)))
                .containsExactly(found("20", RunEnd.FACE, "90", RunEnd.JOINT));
    }

    @Test
    void obstacleBeyondTheWallDoesNotShortenIt() {
        assertThat(first(wall("100").obstacle(Obstacle.Kind.OPENING, in("120"), in("140"), 1, 1)))
                .containsExactly(found("0", RunEnd.FACE, "100", RunEnd.FACE));
    }

    @Test
    void runsUnderARakeBeginAndEndAtTheBottomOfTheSlope() {
        Course course = new Course(1, 1, Length.ZERO, in("4 1/2"), in("5"), in("95"), in("15"), in("85"));
        assertThat(first(wall("100").courses(List.of(course)).start(new WallEnd.Tied())))
                .containsExactly(found("5", RunEnd.RAKE, "95", RunEnd.RAKE));
    }

    /** Where the slope begins within the course, a wall tied there still ends with its joint. */
    @Test
    void jointAtTheFootOfARakeStays() {
        Course course = new Course(1, 1, Length.ZERO, in("4 1/2"), Length.ZERO, in("100"), in("15"), in("85"));
        assertThat(first(wall("100").courses(List.of(course)).start(new WallEnd.Tied())))
                .containsExactly(found("0", RunEnd.JOINT, "100", RunEnd.RAKE));
    }
}
