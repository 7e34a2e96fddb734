package org.coursewright.bond;

import static org.assertj.core.api.Assertions.assertThat;
import static org.coursewright.bond.WallBuilder.in;
import static org.coursewright.bond.WallBuilder.rule;
import static org.coursewright.bond.WallBuilder.stock;
import static org.coursewright.bond.WallBuilder.wall;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.coursewright.measure.Length;
import org.coursewright.measure.Progress;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Which wall runs through where nobody has decided it. */
class HandingTest {

    private static final Comparator<BondResult> BY_COST = Comparator
            .comparingInt(HandingTest::unfillable)
            .thenComparing(BondResult::lapViolations).thenComparing(BondResult::cutPieces);

    private static int unfillable(BondResult result) {
        return result.walls().stream().mapToInt(wall -> wall.unfillable().size()).sum();
    }

    private static BondResult solve(BondRequest request) {
        return BondSolver.standard().solve(request, Progress.NONE);
    }

    /** The request with its meetings pinned in every way there is. */
    private static List<BondRequest> handings(BondRequest request) {
        List<List<Meeting>> handings = List.of(List.of());
        for (Meeting meeting : request.meetings()) {
            List<List<Meeting>> longer = new ArrayList<>();
            for (List<Meeting> handing : handings) {
                for (String through : meeting.walls()) {
                    List<Meeting> next = new ArrayList<>(handing);
                    next.add(new Meeting(meeting.id(), meeting.kind(), meeting.walls(), Optional.of(through)));
                    longer.add(next);
                }
            }
            handings = longer;
        }
        return handings.stream().map(meetings -> new BondRequest(request.walls(), meetings)).toList();
    }

    /** Of each wall the handings differ in its ends only: a solver that remembers lays it once for each of these. */
    @ParameterizedTest
    @ValueSource(longs = {2, 6, 7})
    void noHandingOfARoomIsBetter(long seed) {
        BondRequest room = new RandomRooms(seed).room();
        BondResult chosen = solve(room);
        BondSolver remembering = BondSolver.remembering();
        List<BondResult> all = handings(room).stream().map(each -> remembering.solve(each, Progress.NONE)).toList();

        assertThat(all).hasSize(64).allSatisfy(other -> {
            assertThat(BY_COST.compare(chosen, other)).isLessThanOrEqualTo(0);
            boolean alike = unfillable(other) == unfillable(chosen)
                    && other.lapViolations() == chosen.lapViolations();
            assertThat(chosen.handingOptimal() && alike ? chosen.lowerBound() : 0)
                    .isLessThanOrEqualTo(other.cutPieces());
        });
        assertThat(chosen.lowerBound()).isLessThanOrEqualTo(chosen.cutPieces());
    }

    @ParameterizedTest
    @ValueSource(longs = {2, 3, 6})
    void laidWithItsOwnHandingPinnedARoomIsLaidAlike(long seed) {
        BondRequest room = new RandomRooms(seed).room();
        BondResult chosen = solve(room);
        List<Meeting> pinned = room.meetings().stream().map(meeting -> new Meeting(meeting.id(), meeting.kind(),
                meeting.walls(), Optional.of(chosen.throughOnOdd().get(meeting.id())))).toList();

        assertThat(solve(new BondRequest(room.walls(), pinned)).walls()).isEqualTo(chosen.walls());
    }

    /**
     * Nine modules of 14 1/2 in and 10 in turn both corners without a cut, whoever runs through. In course 5 the lintel
     * begins after three modules: begun with a face that is three units and three joints. Begun with a joint 10 in from
     * the corner, 33 1/2 in are left, which units of 14 in and closers of 10 in do not fill with joints of 3/8 to 3/4 in.
     */
    @Test
    void lintelOfUnequalBearingDecidesTheHanding() {
        BondRequest room = room();
        BondResult chosen = solve(room);

        assertThat(chosen.cutPieces()).isZero();
        assertThat(chosen.lapViolations()).isZero();
        assertThat(chosen.handingOptimal()).isTrue();
        assertThat(chosen.throughOnOdd()).containsEntry("C0", "W0").containsEntry("C1", "W1");
    }

    private static BondRequest room() {
        Length module = in("14 1/2");
        List<WallFace> walls = new ArrayList<>();
        List<Meeting> meetings = new ArrayList<>();
        for (int side = 0; side < 4; side++) {
            Length from = module.times(3).plus(in("10"));
            Length to = from.plus(module.times(2)).minus(in("10"));
            walls.add(wall(module.times(9).plus(in("10"))).mark("W" + side).stocked(stock("14", "10"))
                    .ruled(rule("3 1/2", "3/8", "1/2", "3/4")).courses(8)
                    .obstacle(Obstacle.Kind.OPENING, from, to, 2, 4)
                    .obstacle(Obstacle.Kind.LINTEL, from.minus(in("10")), to.plus(in("14")), 5, 5)
                    .start(new WallEnd.Corner("C" + side, in("10")))
                    .end(new WallEnd.Corner("C" + (side + 1) % 4, in("10"))).build());
            meetings.add(new Meeting("C" + side, Meeting.Kind.CORNER, List.of("W" + (side + 3) % 4, "W" + side),
                    Optional.empty()));
        }
        return new BondRequest(walls, meetings);
    }

    @Test
    void wallWithMoreTeesThanAreChosenIsStillHandedButNotCalledProven() {
        WallBuilder passing = wall(in("14 1/2").times(40)).mark("A").courses(3);
        List<WallFace> walls = new ArrayList<>();
        List<Meeting> meetings = new ArrayList<>();
        for (int tee = 0; tee < 12; tee++) {
            String id = "T" + tee;
            Length from = in("30").plus(in("43 1/2").times(tee));
            passing.tee(id, from, from.plus(in("10")));
            walls.add(wall("101").mark("B" + tee).courses(3).end(new WallEnd.Bonded(id, in("10"))).build());
            meetings.add(new Meeting(id, Meeting.Kind.TEE, List.of("B" + tee, "A"), Optional.empty()));
        }
        walls.add(passing.build());
        BondResult result = solve(new BondRequest(walls, meetings));

        assertThat(result.throughOnOdd()).hasSize(12);
        assertThat(result.handingOptimal()).isFalse();
        assertThat(result.lowerBound()).isLessThanOrEqualTo(result.cutPieces());
    }
}
