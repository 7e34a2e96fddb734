package org.coursewright.bond;

import static org.assertj.core.api.Assertions.assertThat;
import static org.coursewright.bond.WallBuilder.in;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;

import org.coursewright.measure.Length;
import org.coursewright.measure.Progress;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A building laid again and again while it is being changed. */
class RememberingSolverTest {

    /** The room with the openings of one wall moved. */
    private static BondRequest moved(BondRequest room, int index, Length by) {
        WallFace wall = room.walls().get(index);
        List<Obstacle> obstacles = wall.obstacles().stream()
                .map(obstacle -> obstacle.kind() == Obstacle.Kind.TEE
                        ? obstacle
                        : new Obstacle(obstacle.kind(), obstacle.mark(), obstacle.from().plus(by),
                                obstacle.to().plus(by), obstacle.firstCourse(), obstacle.lastCourse(),
                                obstacle.meeting()))
                .toList();
        List<WallFace> walls = new ArrayList<>(room.walls());
        walls.set(index, new WallFace(wall.mark(), wall.length(), wall.stock(), wall.rule(), wall.courses(),
                wall.start(), wall.end(), obstacles));
        return new BondRequest(walls, room.meetings());
    }

    /** A room, its openings moved wall by wall, and the room as it was. */
    private static List<BondRequest> edits(long seed) {
        BondRequest room = new RandomRooms(seed).room();
        List<BondRequest> edits = new ArrayList<>(List.of(room));
        opened(room).forEach(wall -> edits.add(moved(edits.get(edits.size() - 1), wall, in("1/2"))));
        edits.add(room);
        return edits;
    }

    /** Places in the list of the walls with an opening. */
    private static List<Integer> opened(BondRequest room) {
        return IntStream.range(0, room.walls().size())
                .filter(wall -> room.walls().get(wall).obstacles().stream()
                        .anyMatch(obstacle -> obstacle.kind() == Obstacle.Kind.OPENING))
                .boxed().toList();
    }

    /** How often a computation asks whether it is still wanted: a measure of its work. */
    private static int work(BondSolver solver, BondRequest request) {
        AtomicInteger asked = new AtomicInteger();
        solver.solve(request, Progress.until(() -> asked.incrementAndGet() < 0));
        return asked.get();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 6})
    void answersAreThoseOfASolverWithoutMemory(long seed) {
        BondSolver remembering = BondSolver.remembering();

        assertThat(edits(seed)).allSatisfy(edit -> assertThat(remembering.solve(edit, Progress.NONE))
                .isEqualTo(BondSolver.standard().solve(edit, Progress.NONE)));
    }

    @ParameterizedTest
    @ValueSource(longs = {2, 6, 9})
    void onlyWhatChangedIsLaidAgain(long seed) {
        List<BondRequest> edits = edits(seed);
        BondSolver remembering = BondSolver.remembering();
        int afresh = work(remembering, edits.get(0));

        assertThat(work(remembering, edits.get(1))).isLessThan(afresh * 2 / 3);
        assertThat(work(remembering, edits.get(0))).isLessThan(afresh / 5);
    }

    @ParameterizedTest
    @ValueSource(longs = {2, 6, 9})
    void firstAnswerKeepsTheHandingAndTheWallsThatDidNotChange(long seed) {
        List<BondRequest> edits = edits(seed);
        BondSolver remembering = BondSolver.remembering();
        BondResult before = remembering.solve(edits.get(0), Progress.NONE);
        BondResult first = remembering.first(edits.get(1), Progress.NONE);

        assertThat(before.effort()).isEqualTo(Effort.FULL);
        assertThat(first.effort()).isEqualTo(Effort.QUICK);
        assertThat(first.handingOptimal()).isFalse();
        assertThat(first.throughOnOdd()).isEqualTo(before.throughOnOdd());
        int moved = opened(edits.get(0)).get(0);
        IntStream.range(0, first.walls().size()).filter(wall -> wall != moved)
                .forEach(wall -> assertThat(first.walls().get(wall)).isEqualTo(before.walls().get(wall)));
        LayoutAudit.check(edits.get(1).walls().get(moved), first.walls().get(moved));
    }

    @Test
    void firstAnswerNeedsNoEarlierOne() {
        BondRequest room = new RandomRooms(3).room();
        BondResult first = BondSolver.remembering().first(room, Progress.NONE);

        assertThat(first.effort()).isEqualTo(Effort.QUICK);
        assertThat(first.throughOnOdd()).hasSameSizeAs(room.meetings());
    }

    @ParameterizedTest
    @ValueSource(longs = {2, 6, 9})
    void firstAnswerKeepsPins(long seed) {
        BondRequest room = new RandomRooms(seed).room();
        BondSolver remembering = BondSolver.remembering();
        BondResult before = remembering.solve(room, Progress.NONE);
        List<Meeting> pinned = room.meetings().stream()
                .map(meeting -> new Meeting(meeting.id(), meeting.kind(), meeting.walls(), meeting.walls().stream()
                        .filter(mark -> !mark.equals(before.throughOnOdd().get(meeting.id()))).findFirst()))
                .toList();
        BondResult first = remembering.first(new BondRequest(room.walls(), pinned), Progress.NONE);

        assertThat(first.throughOnOdd()).allSatisfy(
                (meeting, through) -> assertThat(through).isNotEqualTo(before.throughOnOdd().get(meeting)));
    }

    @Test
    void solverWithoutMemoryAnswersFully() {
        BondRequest room = new RandomRooms(3).room();

        assertThat(BondSolver.standard().first(room, Progress.NONE).effort()).isEqualTo(Effort.FULL);
    }

    @ParameterizedTest
    @ValueSource(longs = {2, 6})
    void severalThreadsGetTheSameAnswer(long seed) {
        List<BondRequest> edits = edits(seed);
        BondSolver remembering = BondSolver.remembering();
        List<BondResult> together = edits.parallelStream().map(edit -> remembering.solve(edit, Progress.NONE))
                .toList();

        assertThat(together).isEqualTo(edits.stream().map(edit -> BondSolver.standard().solve(edit, Progress.NONE))
                .toList());
    }
}
