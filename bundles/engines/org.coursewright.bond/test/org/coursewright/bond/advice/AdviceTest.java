package org.coursewright.bond.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.coursewright.bond.WallBuilder.in;
import static org.coursewright.bond.WallBuilder.rule;
import static org.coursewright.bond.WallBuilder.stock;
import static org.coursewright.bond.WallBuilder.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.BondResult;
import org.coursewright.bond.BondSolver;
import org.coursewright.bond.InvalidBondRequestException;
import org.coursewright.bond.Meeting;
import org.coursewright.bond.Obstacle;
import org.coursewright.bond.RandomRooms;
import org.coursewright.bond.WallBuilder;
import org.coursewright.bond.WallEnd;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;
import org.coursewright.bond.internal.LayingCost;
import org.coursewright.measure.Length;
import org.coursewright.measure.Progress;
import org.junit.jupiter.api.Test;

/** Changes of dimensions that spare cuts. */
class AdviceTest {

    private static final String OPENING = Obstacle.Kind.OPENING.name();

    private static Advice advise(BondRequest building, List<Adjustable> adjustables, Optional<Length> budget) {
        return BondAdvisor.standard().advise(new AdviceRequest(building, adjustables, List.of(), in("1/4"), budget),
                Progress.NONE);
    }

    private static Adjustable offset(String wall, String tolerance) {
        return Adjustable.within(wall, Optional.of(OPENING), Dimension.OFFSET, in(tolerance));
    }

    private static Adjustable width(String wall, String tolerance) {
        return Adjustable.within(wall, Optional.of(OPENING), Dimension.WIDTH, in(tolerance));
    }

    private static Adjustable length(String wall, String tolerance) {
        return Adjustable.within(wall, Optional.empty(), Dimension.LENGTH, in(tolerance));
    }

    /** Joints of half an inch, no wider and no narrower: ten units and nine joints, and halves in every other course. */
    private static WallBuilder tenUnits() {
        return wall("144 1/2").stocked(stock("14", "6 3/4")).ruled(rule("3 1/2", "1/2", "1/2", "1/2")).courses(4);
    }

    /** Three units and two joints take 43 in before the opening, four units and three joints 57 1/2 in behind it. */
    private static BondRequest opening(String from, String to) {
        return tenUnits().obstacle(Obstacle.Kind.OPENING, in(from), in(to), 1, 2).alone();
    }

    @Test
    void openingOffTheModuleIsProposedToMoveOntoIt() {
        Advice advice = advise(opening("44 1/4", "88 1/4"), List.of(offset("W1", "3")), Optional.empty());

        assertThat(advice.before().cutPieces()).isPositive();
        assertThat(advice.proposals()).singleElement().satisfies(proposal -> {
            assertThat(proposal.from()).isEqualTo(in("44 1/4"));
            assertThat(proposal.to()).isEqualTo(in("43"));
            assertThat(proposal.movement()).isEqualTo(in("1 1/4"));
            assertThat(proposal.cutsBefore()).isEqualTo(advice.before().cutPieces());
            assertThat(proposal.cutsAfter()).isZero();
        });
        assertThat(advice.after().cutPieces()).isZero();
        assertThat(advice.after().lapViolations()).isZero();
    }

    @Test
    void openingTooWideIsProposedNarrower() {
        Advice advice = advise(opening("43", "87 3/4"), List.of(width("W1", "2")), Optional.empty());

        assertThat(advice.proposals()).singleElement().satisfies(proposal -> {
            assertThat(proposal.from()).isEqualTo(in("44 3/4"));
            assertThat(proposal.to()).isEqualTo(in("44"));
        });
        assertThat(advice.after().cutPieces()).isZero();
    }

    @Test
    void bothMayBeNeeded() {
        Advice advice = advise(opening("43 1/2", "88"), List.of(offset("W1", "2"), width("W1", "2")),
                Optional.empty());

        assertThat(advice.after().cutPieces()).isZero();
        assertThat(advice.movement()).isEqualTo(in("1"));
    }

    @Test
    void freeEndIsProposedToMove() {
        WallFace odd = wall("146").stocked(stock("14", "6 3/4")).ruled(rule("3 1/2", "1/2", "1/2", "1/2")).courses(4)
                .build();
        Advice advice = advise(new BondRequest(List.of(odd), List.of()), List.of(length("W1", "2")), Optional.empty());

        assertThat(advice.proposals()).singleElement()
                .satisfies(proposal -> assertThat(proposal.to()).isEqualTo(in("144 1/2")));
        assertThat(advice.changed().walls().get(0).length()).isEqualTo(in("144 1/2"));
        assertThat(advice.after().cutPieces()).isZero();
    }

    @Test
    void changesBeyondTheBudgetAreNotProposed() {
        BondRequest building = opening("44 1/4", "88 1/4");

        Advice advice = advise(building, List.of(offset("W1", "3")), Optional.of(in("3/4")));

        assertThat(advice.movement()).isLessThanOrEqualTo(in("3/4"));
        assertThat(advice.after().cutPieces()).isPositive();
        assertThat(advise(building, List.of(offset("W1", "3")), Optional.of(in("1 1/4"))).after().cutPieces())
                .isZero();
    }

    @Test
    void budgetGoesToTheWallWhereItSparesMost() {
        WallFace low = tenUnits().mark("A").obstacle(Obstacle.Kind.OPENING, in("44"), in("88"), 1, 1).build();
        WallFace high = tenUnits().mark("B").courses(8).obstacle(Obstacle.Kind.OPENING, in("44"), in("88"), 1, 6)
                .build();
        BondRequest building = new BondRequest(List.of(low, high), List.of());

        Advice advice = advise(building, List.of(offset("A", "3"), offset("B", "3")), Optional.of(in("1")));

        assertThat(advice.proposals()).singleElement()
                .satisfies(proposal -> assertThat(proposal.adjustable().wall()).isEqualTo("B"));
    }

    @Test
    void lintelGoesWithItsOpening() {
        String mark = "N1";
        WallFace plain = tenUnits().build();
        WallFace face = new WallFace(plain.mark(), plain.length(), plain.stock(), plain.rule(), plain.courses(),
                plain.start(), plain.end(),
                List.of(new Obstacle(Obstacle.Kind.OPENING, mark, in("44 1/4"), in("88 1/4"), 1, 2, Optional.empty()),
                        new Obstacle(Obstacle.Kind.LINTEL, mark, in("30 1/4"), in("102 1/4"), 3, 3,
                                Optional.empty())));
        Advice advice = advise(new BondRequest(List.of(face), List.of()),
                List.of(Adjustable.within("W1", Optional.of(mark), Dimension.OFFSET, in("3"))), Optional.empty());

        List<Obstacle> changed = advice.changed().walls().get(0).obstacles();
        assertThat(advice.proposals()).isNotEmpty();
        assertThat(changed.get(0).from().minus(changed.get(1).from())).isEqualTo(in("14"));
        assertThat(changed.get(1).to().minus(changed.get(0).to())).isEqualTo(in("14"));
    }

    @Test
    void placesWithoutRoomAreLeftOut() {
        BondRequest building = tenUnits().obstacle(Obstacle.Kind.OPENING, in("43"), in("87"), 1, 2)
                .tee("T", in("88"), in("98")).alone();
        Meeting tee = new Meeting("T", Meeting.Kind.TEE, List.of("W1"), Optional.empty());
        BondRequest met = new BondRequest(building.walls(), List.of(tee));

        Advice advice = advise(met, List.of(offset("W1", "3")), Optional.empty());

        assertThat(advice.profiles().get(0).points()).extracting(ProfilePoint::change)
                .allSatisfy(change -> assertThat(change).isLessThanOrEqualTo(in("1"))).hasSize(12 + 1 + 4);
    }

    @Test
    void placesToKeepClearAreLeftOut() {
        AdviceRequest request = new AdviceRequest(opening("43", "87"), List.of(offset("W1", "3"), width("W1", "2")),
                List.of(new KeepClear("W1", in("88"), in("98"))), in("1/4"), Optional.empty());

        Advice advice = BondAdvisor.standard().advise(request, Progress.NONE);

        assertThat(advice.profiles().get(0).points()).hasSize(12 + 1 + 4);
        assertThat(advice.profiles().get(1).points()).hasSize(8 + 1 + 4);
    }

    @Test
    void lengthOfAWallThatMeetsOthersAtBothEndsStays() {
        WallFace tied = tenUnits().start(new WallEnd.Tied()).end(new WallEnd.Tied()).build();
        Advice advice = advise(new BondRequest(List.of(tied), List.of()), List.of(length("W1", "2")),
                Optional.empty());

        assertThat(advice.profiles().get(0).points()).hasSize(1);
        assertThat(advice.proposals()).isEmpty();
    }

    @Test
    void whatIsPromisedForARoomComesTrue() {
        for (long seed = 1; seed <= 2; seed++) {
            BondRequest room = new RandomRooms(seed).room();
            Advice advice = advise(room, adjustables(room), Optional.of(in("4")));

            assertThat(BondSolver.standard().solve(advice.changed(), Progress.NONE)).isEqualTo(advice.after());
            assertThat(advice.movement()).isLessThanOrEqualTo(in("4"));
            assertThat(spared(advice)).isGreaterThanOrEqualTo(0);
            advice.profiles().forEach(profile -> checkProfile(profile));
        }
    }

    private static List<Adjustable> adjustables(BondRequest room) {
        List<Adjustable> adjustables = new ArrayList<>();
        for (WallFace face : room.walls()) {
            if (face.obstacles().stream().anyMatch(obstacle -> obstacle.mark().equals(OPENING))) {
                adjustables.add(offset(face.mark(), "1"));
                adjustables.add(width(face.mark(), "1"));
            }
        }
        return adjustables;
    }

    private static int spared(Advice advice) {
        int laps = advice.before().lapViolations() - advice.after().lapViolations();
        return laps == 0 ? advice.before().cutPieces() - advice.after().cutPieces() : laps;
    }

    private static void checkProfile(DimensionProfile profile) {
        assertThat(profile.points()).anySatisfy(point -> {
            assertThat(point.change()).isEqualTo(profile.best());
            assertThat(point.basis()).isNotEqualTo(ProfilePoint.Basis.BOUND);
        });
    }

    /** Every value of a wall alone, laid as a building of its own, against what the profile says of it. */
    @Test
    void profileSaysOfEveryValueWhatIsLaidOrWhatLimitsIt() {
        BondRequest building = opening("44 1/4", "88 1/4");
        DimensionProfile profile = advise(building, List.of(offset("W1", "3")), Optional.empty()).profiles().get(0);

        assertThat(profile.points()).hasSize(25).allSatisfy(point -> {
            Length from = in("44 1/4").plus(point.change());
            WallLayout laid = BondSolver.standard().solve(tenUnits()
                    .obstacle(Obstacle.Kind.OPENING, from, from.plus(in("44")), 1, 2).alone(), Progress.NONE).walls()
                    .get(0);
            checkAgainst(point, laid);
        });
        assertThat(profile.best()).isEqualTo(in("1 1/4").negated());
    }

    private static DimensionProfile soon(BondRequest building, BondResult laid, Adjustable adjustable) {
        return BondAdvisor.standard().profile(
                new ProfileRequest(building, laid, adjustable, List.of(), in("1/4")), Progress.NONE);
    }

    private static DimensionProfile soon(BondRequest building, Adjustable adjustable) {
        return soon(building, BondSolver.standard().solve(building, Progress.NONE), adjustable);
    }

    private static Adjustable nearJamb(String wall, String tolerance) {
        return Adjustable.within(wall, Optional.of(OPENING), Dimension.NEAR_JAMB, in(tolerance));
    }

    /** With units of 14 in, halves of 6 3/4 in and joints of 1/2 in: at 28 1/2, 35 3/4, 43, 50 1/4 and 57 1/2 in. */
    @Test
    void nearJambIsFoundWhereItStandsOnTheJoints() {
        DimensionProfile profile = soon(opening("43 1/2", "87"), nearJamb("W1", "16"));

        assertThat(profile.planned()).isEqualTo(in("43 1/2"));
        assertThat(profile.best()).isEqualTo(in("1/2").negated());
        assertThat(profile.points()).filteredOn(point -> point.cutPieces() == 0).extracting(ProfilePoint::change)
                .containsExactly(in("15").negated(), in("7 3/4").negated(), in("1/2").negated(), in("6 3/4"), in("14"));
    }

    /** Fitted in a hurry: every value says what some layout comes to, or what none goes below. */
    @Test
    void profilesInAHurryAgreeWithLayingEveryValue() {
        for (long seed = 1; seed <= 3; seed++) {
            BondRequest room = new RandomRooms(seed).room();
            BondResult laid = BondSolver.standard().solve(room, Progress.NONE);
            BondRequest handed = handed(room, laid);
            for (Adjustable adjustable : adjustables(room)) {
                DimensionProfile profile = soon(room, laid, adjustable);

                assertThat(profile.points()).anyMatch(point -> point.basis() == ProfilePoint.Basis.LAID)
                        .allSatisfy(point -> checkAgainst(point, laid(handed, adjustable, point.change())));
            }
        }
    }

    /** An opening that comes off the module needs cuts, whether it moves to the one side or to the other. */
    @Test
    void mirroredWallHasTheMirroredProfile() {
        DimensionProfile profile = soon(opening("43", "87"), offset("W1", "3"));
        DimensionProfile mirrored = soon(opening("57 1/2", "101 1/2"), offset("W1", "3"));

        assertThat(mirrored.points()).hasSameSizeAs(profile.points()).allSatisfy(point -> {
            Length change = point.change().negated();
            assertThat(profile.points()).filteredOn(other -> other.change().equals(change)).singleElement()
                    .satisfies(other -> assertThat(point.cutPieces()).isEqualTo(other.cutPieces()));
        });
    }

    /** The layout at hand is of an opening elsewhere: nothing can be fitted, bounds are told all the same. */
    @Test
    void layoutOfTheWallAsItWasIsNotTakenForOneAsItIs() {
        BondResult before = BondSolver.standard().solve(opening("43", "87"), Progress.NONE);

        DimensionProfile profile = soon(opening("44", "88"), before, offset("W1", "1"));

        assertThat(profile.points()).hasSize(9)
                .allMatch(point -> point.basis() == ProfilePoint.Basis.BOUND);
    }

    @Test
    void unknownWallCannotBeLookedAt() {
        BondRequest building = opening("43", "87");
        assertThatThrownBy(() -> soon(building, offset("W9", "1"))).isInstanceOf(InvalidBondRequestException.class)
                .hasMessageContaining("W9");
    }

    private static BondRequest handed(BondRequest room, BondResult laid) {
        return new BondRequest(room.walls(), room.meetings().stream().map(meeting -> new Meeting(meeting.id(),
                meeting.kind(), meeting.walls(), Optional.ofNullable(laid.throughOnOdd().get(meeting.id())))).toList());
    }

    private static void checkAgainst(ProfilePoint point, WallLayout laid) {
        LayingCost said = new LayingCost(point.unfillable(), point.lapViolations(), point.cutPieces());
        assertThat(point.leastCuts()).isLessThanOrEqualTo(laid.cutPieces());
        switch (point.basis()) {
            case LAID -> assertThat(said).isEqualTo(LayingCost.of(laid));
            case FITTED -> assertThat(said).satisfiesAnyOf(
                    cost -> assertThat(cost).isGreaterThanOrEqualTo(LayingCost.of(laid)),
                    cost -> assertThat(laid.optimal()).isFalse());
            case BOUND -> assertThat(said).isLessThanOrEqualTo(LayingCost.of(laid));
        }
    }

    /** Walls of rooms laid for every value of every dimension, with their corners handed as planned. */
    @Test
    void profilesOfRoomsAgreeWithLayingEveryValue() {
        for (long seed = 1; seed <= 2; seed++) {
            BondRequest room = new RandomRooms(seed).room();
            Advice advice = advise(room, adjustables(room), Optional.empty());
            BondRequest handed = handed(room, advice.before());

            for (DimensionProfile profile : advice.profiles()) {
                for (ProfilePoint point : profile.points()) {
                    checkAgainst(point, laid(handed, profile.adjustable(), point.change()));
                }
            }
        }
    }

    private static WallLayout laid(BondRequest building, Adjustable adjustable, Length change) {
        List<WallFace> walls = building.walls().stream().map(face -> face.mark().equals(adjustable.wall())
                ? changed(face, adjustable, change)
                : face).toList();
        return BondSolver.standard().solve(new BondRequest(walls, building.meetings()), Progress.NONE).walls().stream()
                .filter(wall -> wall.mark().equals(adjustable.wall())).findFirst().orElseThrow();
    }

    private static WallFace changed(WallFace face, Adjustable adjustable, Length change) {
        Length shift = adjustable.dimension() == Dimension.OFFSET ? change : Length.ZERO;
        List<Obstacle> obstacles = face.obstacles().stream().map(obstacle -> adjustable.opening()
                .filter(obstacle.mark()::equals).isPresent()
                        ? new Obstacle(obstacle.kind(), obstacle.mark(), obstacle.from().plus(shift),
                                obstacle.to().plus(change), obstacle.firstCourse(), obstacle.lastCourse(),
                                obstacle.meeting())
                        : obstacle)
                .toList();
        return new WallFace(face.mark(), face.length(), face.stock(), face.rule(), face.courses(), face.start(),
                face.end(), obstacles);
    }

    /** What may change more can spare no less: every value of the smaller tolerance is one of the greater. */
    @Test
    void moreToleranceNeverAddsCuts() {
        for (long seed = 1; seed <= 3; seed++) {
            BondRequest room = new RandomRooms(seed).room();
            LayingCost least = cost(advise(room, List.of(), Optional.empty()));
            for (String tolerance : List.of("1/4", "1", "2")) {
                List<Adjustable> wider = adjustables(room).stream()
                        .map(each -> Adjustable.within(each.wall(), each.opening(), each.dimension(), in(tolerance)))
                        .toList();
                LayingCost cost = cost(advise(room, wider, Optional.empty()));
                assertThat(cost).isLessThanOrEqualTo(least);
                least = cost;
            }
        }
    }

    private static LayingCost cost(Advice advice) {
        return advice.after().walls().stream().map(LayingCost::of).reduce(LayingCost.NONE, LayingCost::plus);
    }

    @Test
    void unknownWallIsReported() {
        BondRequest building = opening("43", "87");
        assertThatThrownBy(() -> advise(building, List.of(offset("W9", "1")), Optional.empty()))
                .isInstanceOf(InvalidBondRequestException.class).hasMessageContaining("W9");
    }

    @Test
    void unknownOpeningIsReported() {
        Adjustable door = Adjustable.within("W1", Optional.of("D9"), Dimension.OFFSET, in("1"));
        BondRequest building = opening("43", "87");
        assertThatThrownBy(() -> advise(building, List.of(door), Optional.empty()))
                .isInstanceOf(InvalidBondRequestException.class).hasMessageContaining("D9");
    }

    @Test
    void adviceCanBeCancelled() {
        AdviceRequest request = new AdviceRequest(opening("44", "88"), List.of(offset("W1", "3")), List.of(), in("1/4"),
                Optional.empty());
        Progress cancelled = new Progress() {
            @Override
            public void done(double fraction) {
                // nobody listens
            }

            @Override
            public boolean isCancelled() {
                return true;
            }
        };
        assertThatThrownBy(() -> BondAdvisor.standard().advise(request, cancelled))
                .isInstanceOf(CancellationException.class);
    }
}
