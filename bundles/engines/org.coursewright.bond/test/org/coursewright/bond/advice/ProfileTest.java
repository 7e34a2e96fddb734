package org.coursewright.bond.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.coursewright.bond.WallBuilder.in;
import static org.coursewright.bond.advice.AdviceCases.advise;
import static org.coursewright.bond.advice.AdviceCases.nearJamb;
import static org.coursewright.bond.advice.AdviceCases.offset;
import static org.coursewright.bond.advice.AdviceCases.opening;
import static org.coursewright.bond.advice.AdviceCases.soon;
import static org.coursewright.bond.advice.AdviceCases.tenUnits;
import static org.coursewright.bond.advice.AdviceCases.width;

import java.util.List;
import java.util.Optional;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.BondResult;
import org.coursewright.bond.BondSolver;
import org.coursewright.bond.Meeting;
import org.coursewright.bond.Obstacle;
import org.coursewright.bond.WallLayout;
import org.coursewright.measure.Length;
import org.coursewright.measure.Progress;
import org.junit.jupiter.api.Test;

/** What each value of a dimension comes to, worked by hand or laid as a building of its own. */
class ProfileTest {

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
            ProfileAudit.check(point, laid);
        });
        assertThat(profile.best()).isEqualTo(in("1 1/4").negated());
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
}
