package org.coursewright.core.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;

import org.coursewright.core.geometry.WallMeeting.Kind;
import org.coursewright.measure.Length;
import org.junit.jupiter.api.Test;

class WallMeetingTest {

    @Test
    void aWallAloneHasTwoFreeEnds() {
        WallNetwork network = new Plan().wall("A", 0, 0, 100, 0, 10).network();
        assertThat(network.meetings()).extracting(WallMeeting::kind).containsExactly(Kind.FREE, Kind.FREE);
        assertThat(network.meetingAt("A", Place.END).ends()).containsExactly(end("A", Place.END, 100));
        assertThat(network.meetingAt("A", Place.END).degrees()).isEqualTo("180.0");
        assertThat(network.meetingAt("A", Place.END).square()).isTrue();
    }

    @Test
    void endsThatCoincideAtRightAnglesMakeASquareCorner() {
        WallMeeting corner = new Plan().wall("A", 0, 0, 100, 0, 10).wall("B", 100, 80, 100, 0, 14).network()
                .meetingAt("B", Place.END);
        assertThat(corner.kind()).isEqualTo(Kind.CORNER);
        assertThat(corner.ends()).containsExactly(end("A", Place.END, 100), end("B", Place.END, 80));
        assertThat(corner.x()).isEqualTo(Length.ofInches(100));
        assertThat(corner.y()).isEqualTo(Length.ZERO);
        assertThat(corner.square()).isTrue();
        assertThat(corner.degrees()).isEqualTo("90.0");
    }

    /** The 3-4-5 triangle: its smallest angle is 36.87 degrees. */
    @Test
    void aCornerThatIsNotSquareTellsItsAngle() {
        WallMeeting corner = new Plan().wall("A", 0, 0, 100, 0, 10).wall("B", 0, 0, 80, 60, 10).network()
                .meetingAt("A", Place.START);
        assertThat(corner.kind()).isEqualTo(Kind.CORNER);
        assertThat(corner.square()).isFalse();
        assertThat(corner.degrees()).isEqualTo("36.9");
    }

    /** 5 mm in a metre is 1 in 200: one inch in 200 still counts, in 199 no more. */
    @Test
    void whatIsSquareToFiveMillimetresInAMetreCountsAsSquare() {
        assertThat(new Plan().wall("A", 0, 0, 100, 0, 10).wall("B", 0, 0, 1, 200, 10).network()
                .meetingAt("A", Place.START).square()).isTrue();
        assertThat(new Plan().wall("A", 0, 0, 100, 0, 10).wall("B", 0, 0, 1, 199, 10).network()
                .meetingAt("A", Place.START).square()).isFalse();
    }

    @Test
    void wallsInLineCarryOn() {
        WallMeeting inLine = new Plan().wall("A", 0, 0, 100, 0, 10).wall("B", 200, 0, 100, 0, 14).network()
                .meetingAt("A", Place.END);
        assertThat(inLine.kind()).isEqualTo(Kind.INLINE);
        assertThat(inLine.square()).isTrue();
        assertThat(inLine.degrees()).isEqualTo(new BigDecimal("180.0"));
    }

    @Test
    void anEndOnTheInsideOfAnotherWallMakesATee() {
        WallNetwork network = new Plan().wall("A", 0, 0, 100, 0, 14).wall("B", 30, 0, 30, 80, 10).network();
        WallMeeting tee = network.meetingAt("B", Place.START);
        assertThat(tee.kind()).isEqualTo(Kind.TEE);
        assertThat(tee.ends()).containsExactly(end("B", Place.START, 0), end("A", Place.ALONG, 30));
        assertThat(tee.square()).isTrue();
        assertThat(network.meetingsAlong("A")).containsExactly(tee);
        assertThat(network.meetingsAlong("B")).isEmpty();
    }

    @Test
    void threeEndsOfWhichTwoAreInLineMakeATeeWithTheStemFirst() {
        WallMeeting tee = new Plan().wall("A", 0, 0, 50, 0, 14).wall("S", 50, 0, 50, 80, 10)
                .wall("B", 50, 0, 100, 0, 14).network().meetingAt("S", Place.START);
        assertThat(tee.kind()).isEqualTo(Kind.TEE);
        assertThat(tee.ends()).extracting(MeetingEnd::mark).containsExactly("S", "A", "B");
    }

    @Test
    void stemsFromBothSidesMakeACross() {
        WallMeeting cross = new Plan().wall("A", 0, 0, 100, 0, 14).wall("N", 50, 0, 50, 80, 10)
                .wall("S", 50, -80, 50, 0, 10).network().meetingAt("N", Place.START);
        assertThat(cross.kind()).isEqualTo(Kind.CROSS);
        assertThat(cross.ends()).containsExactly(end("N", Place.START, 0), end("S", Place.END, 80),
                end("A", Place.ALONG, 50));
        assertThat(cross.square()).isTrue();
    }

    @Test
    void fourEndsMakeACross() {
        WallMeeting cross = new Plan().wall("W", -50, 0, 0, 0, 14).wall("N", 0, 0, 0, 80, 10)
                .wall("E", 0, 0, 50, 0, 14).wall("S", 0, 0, 0, -80, 10).network().meetingAt("S", Place.START);
        assertThat(cross.kind()).isEqualTo(Kind.CROSS);
        assertThat(cross.ends()).extracting(MeetingEnd::mark).containsExactly("N", "S", "W", "E");
        assertThat(cross.square()).isTrue();
    }

    @Test
    void stemsFromOneSideMakeATeeThatIsNotSquare() {
        WallMeeting tee = new Plan().wall("A", 0, 0, 100, 0, 14).wall("L", 50, 0, 20, 80, 10)
                .wall("R", 50, 0, 80, 80, 10).network().meetingAt("L", Place.START);
        assertThat(tee.kind()).isEqualTo(Kind.TEE);
        assertThat(tee.square()).isFalse();
    }

    @Test
    void threeEndsInAYMakeACornerThatIsNotSquare() {
        WallMeeting corner = new Plan().wall("A", 0, 0, 0, -80, 10).wall("B", 0, 0, 60, 80, 10)
                .wall("C", 0, 0, -60, 80, 10).network().meetingAt("A", Place.START);
        assertThat(corner.kind()).isEqualTo(Kind.CORNER);
        assertThat(corner.ends()).hasSize(3);
        assertThat(corner.square()).isFalse();
    }

    @Test
    void meetingsAlongAWallAreInItsDirection() {
        WallNetwork network = new Plan().wall("A", 100, 0, 0, 0, 14).wall("B", 20, 0, 20, 80, 10)
                .wall("C", 70, 0, 70, 80, 10).network();
        assertThat(network.meetingsAlong("A")).extracting(meeting -> meeting.ends().get(0).mark())
                .containsExactly("C", "B");
    }

    /** 0.1 mm is 32 units. */
    @Test
    void endsATenthOfAMillimetreApartMeetAndFartherOnesDoNot() {
        assertThat(cornerWithGap(32).meetingAt("A", Place.END).kind()).isEqualTo(Kind.CORNER);
        assertThat(cornerWithGap(33).meetingAt("A", Place.END).kind()).isEqualTo(Kind.FREE);
        assertThat(teeWithGap(32).meetingAt("B", Place.START).kind()).isEqualTo(Kind.TEE);
        assertThat(teeWithGap(-32).meetingAt("B", Place.START).kind()).isEqualTo(Kind.TEE);
        assertThat(teeWithGap(33).meetingAt("B", Place.START).kind()).isEqualTo(Kind.FREE);
    }

    @Test
    void anEndJoinedToAnotherDoesNotAlsoMeetTheSideOfItsWall() {
        WallMeeting corner = cornerWithGap(-20).meetingAt("B", Place.START);
        assertThat(corner.kind()).isEqualTo(Kind.CORNER);
        assertThat(corner.ends()).hasSize(2);
    }

    @Test
    void thereIsOneMeetingAtAnEndAndNoneAtAWallThatIsNotThere() {
        WallNetwork network = new Plan().wall("A", 0, 0, 100, 0, 14).network();
        assertThatThrownBy(() -> network.meetingAt("A", Place.ALONG)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> network.meetingAt("B", Place.END)).isInstanceOf(IllegalArgumentException.class)
                .hasMessage("There is no wall B in the network.");
        assertThatThrownBy(() -> network.meetingsAlong("B")).isInstanceOf(IllegalArgumentException.class);
    }

    private static WallNetwork cornerWithGap(long units) {
        Plan plan = new Plan().wall("A", 0, 0, 100, 0, 10);
        plan.walls().add(new CentreLine("B", Length.ofInches(100).plus(Length.ofUnits(units)), Length.ZERO,
                Length.ofInches(100).plus(Length.ofUnits(units)), Length.ofInches(80), Length.ofInches(10)));
        return plan.network();
    }

    private static WallNetwork teeWithGap(long units) {
        Plan plan = new Plan().wall("A", 0, 0, 100, 0, 10);
        plan.walls().add(new CentreLine("B", Length.ofInches(50), Length.ofUnits(units), Length.ofInches(50),
                Length.ofInches(80), Length.ofInches(10)));
        return plan.network();
    }

    private static MeetingEnd end(String mark, Place place, long inches) {
        return new MeetingEnd(mark, place, Length.ofInches(inches));
    }
}
