package org.coursewright.core.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.coursewright.core.geometry.WallMeeting.Kind;
import org.coursewright.measure.Length;
import org.junit.jupiter.api.Test;

/** Near is 100 mm, not quite 4 in, beyond half the thickness of the other wall: for 14 in walls 10.9 in. */
class NearMissTest {

    @Test
    void anEndThatStopsAtTheFaceOfAnotherWallMissesItsCentreLine() {
        WallNetwork network = new Plan().wall("A", 0, 0, 300, 0, 14).wall("B", 50, 7, 50, 80, 10).network();
        assertThat(network.nearMisses()).containsExactly(new NearMiss(end("B", Place.START, 0),
                end("A", Place.ALONG, 50), Length.ofInches(7), Length.ofInches(50), Length.ZERO));
        assertThat(network.meetingAt("B", Place.START).kind()).isEqualTo(Kind.FREE);
    }

    @Test
    void joiningAnEndAsItIsSaidMakesATee() {
        NearMiss miss = new Plan().wall("A", 0, 0, 400, 300, 14).wall("B", 45, 42, 0, 200, 10).network().nearMisses()
                .get(0);
        Plan plan = new Plan().wall("A", 0, 0, 400, 300, 14);
        plan.walls().add(new CentreLine("B", miss.joinX(), miss.joinY(), Length.ZERO, Length.ofInches(200),
                Length.ofInches(10)));
        assertThat(plan.network().meetingAt("B", Place.START).kind()).isEqualTo(Kind.TEE);
        assertThat(plan.network().nearMisses()).isEmpty();
    }

    @Test
    void tenInchesFromAFourteenInchWallIsNearAndElevenIsNot() {
        assertThat(teeWithGap(10, Length.ofMillimetres(100)).nearMisses()).hasSize(1);
        assertThat(teeWithGap(11, Length.ofMillimetres(100)).nearMisses()).isEmpty();
    }

    @Test
    void theToleranceCanBeChosen() {
        assertThat(teeWithGap(8, Length.ofInches(1)).nearMisses()).hasSize(1);
        assertThat(teeWithGap(9, Length.ofInches(1)).nearMisses()).isEmpty();
        assertThatThrownBy(() -> teeWithGap(9, Length.ofInches(-1))).isInstanceOf(IllegalArgumentException.class)
                .hasMessage("The tolerance (-25.4 mm) must be from 0 to 10 m.");
    }

    @Test
    void twoEndsThatMissEachOtherAreToldOnce() {
        WallNetwork network = new Plan().wall("A", 0, 0, 100, 0, 10).wall("B", 103, 4, 103, 80, 10).network();
        assertThat(network.nearMisses()).containsExactly(new NearMiss(end("A", Place.END, 100),
                end("B", Place.START, 0), Length.ofInches(5), Length.ofInches(103), Length.ofInches(4)));
    }

    @Test
    void anEndThatGoesTooFarMissesAndDoesNotCross() {
        WallNetwork network = new Plan().wall("A", 0, 0, 300, 0, 14).wall("B", 50, -6, 50, 80, 10).network();
        assertThat(network.nearMisses()).extracting(NearMiss::distance).containsExactly(Length.ofInches(6));
        assertThat(network.crossings()).isEmpty();
    }

    @Test
    void aBarThatGoesOnALittleBeyondItsStemMissesIt() {
        WallNetwork network = new Plan().wall("A", 0, 0, 105, 0, 10).wall("B", 100, 0, 100, 80, 10).network();
        assertThat(network.nearMisses()).containsExactly(new NearMiss(end("A", Place.END, 105),
                end("B", Place.START, 0), Length.ofInches(5), Length.ofInches(100), Length.ZERO));
    }

    @Test
    void aShortWallDoesNotMissTheWallItStartsFrom() {
        WallNetwork network = new Plan().wall("A", 0, 0, 300, 0, 14).wall("B", 50, 0, 50, 10, 10).network();
        assertThat(network.nearMisses()).isEmpty();
    }

    @Test
    void theNearestOfSeveralIsTold() {
        WallNetwork network = new Plan().wall("A", 0, 0, 100, 0, 14).wall("B", 0, 15, 100, 15, 14)
                .wall("P", 95, 9, 350, 9, 4).network();
        assertThat(network.nearMisses()).extracting(miss -> miss.other().mark()).containsExactly("B");
    }

    private static WallNetwork teeWithGap(long inches, Length tolerance) {
        return WallNetwork.of(new Plan().wall("A", 0, 0, 300, 0, 14).wall("B", 50, inches, 50, 80, 10).walls(),
                tolerance);
    }

    private static MeetingEnd end(String mark, Place place, long inches) {
        return new MeetingEnd(mark, place, Length.ofInches(inches));
    }
}
