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

    private static List<BondRequest> edits() {
        BondRequest room = new RandomRooms(1).room();
        List<BondRequest> edits = new ArrayList<>(List.of(room));
        for (int edit = 1; edit <= 3; edit++) {
            edits.add(moved(edits.get(edit - 1), edit, in("1/2")));
        }
        edits.add(room);
        return edits;
    }

    /** How often a computation asks whether it is still wanted: a measure of its work. */
    private static int work(BondSolver solver, BondRequest request) {
        AtomicInteger asked = new AtomicInteger();
        solver.solve(request, new Progress() {
            @Override
            public void done(double fraction) {
                // only asking counts
            }

            @Override
            public boolean isCancelled() {
                asked.incrementAndGet();
                return false;
            }
        });
        return asked.get();
    }

    @Test
    void answersAreThoseOfASolverWithoutMemory() {
        BondSolver remembering = BondSolver.remembering();

        assertThat(edits()).allSatisfy(edit -> assertThat(remembering.solve(edit, Progress.NONE))
                .isEqualTo(BondSolver.standard().solve(edit, Progress.NONE)));
    }

    @Test
    void onlyWhatChangedIsLaidAgain() {
        List<BondRequest> edits = edits();
        BondSolver remembering = BondSolver.remembering();
        int afresh = work(remembering, edits.get(0));

        assertThat(work(remembering, edits.get(1))).isLessThan(afresh * 2 / 3);
        assertThat(work(remembering, edits.get(0))).isLessThan(afresh / 5);
    }

    @Test
    void firstAnswerKeepsTheHandingAndTheWallsThatDidNotChange() {
        List<BondRequest> edits = edits();
        BondSolver remembering = BondSolver.remembering();
        BondResult before = remembering.solve(edits.get(0), Progress.NONE);
        BondResult first = remembering.first(edits.get(1), Progress.NONE);

        assertThat(before.effort()).isEqualTo(Effort.FULL);
        assertThat(first.effort()).isEqualTo(Effort.QUICK);
        assertThat(first.handingOptimal()).isFalse();
        assertThat(first.throughOnOdd()).isEqualTo(before.throughOnOdd());
        IntStream.of(0, 2, 3, 4)
                .forEach(wall -> assertThat(first.walls().get(wall)).isEqualTo(before.walls().get(wall)));
        LayoutAudit.check(edits.get(1).walls().get(1), first.walls().get(1));
    }

    @Test
    void firstAnswerNeedsNoEarlierOne() {
        BondRequest room = edits().get(0);
        BondResult first = BondSolver.remembering().first(room, Progress.NONE);

        assertThat(first.effort()).isEqualTo(Effort.QUICK);
        assertThat(first.throughOnOdd()).hasSameSizeAs(room.meetings());
    }

    @Test
    void firstAnswerKeepsPins() {
        BondRequest room = edits().get(0);
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
        BondRequest room = edits().get(0);

        assertThat(BondSolver.standard().first(room, Progress.NONE).effort()).isEqualTo(Effort.FULL);
    }

    @Test
    void severalThreadsGetTheSameAnswer() {
        List<BondRequest> edits = edits();
        BondSolver remembering = BondSolver.remembering();
        List<BondResult> together = edits.parallelStream().map(edit -> remembering.solve(edit, Progress.NONE))
                .toList();

        assertThat(together).isEqualTo(edits.stream().map(edit -> BondSolver.standard().solve(edit, Progress.NONE))
                .toList());
    }
}
