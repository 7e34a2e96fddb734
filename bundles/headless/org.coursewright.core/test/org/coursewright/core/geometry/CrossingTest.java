package org.coursewright.core.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;

import org.coursewright.core.geometry.Crossing.Kind;
import org.coursewright.measure.Length;
import org.junit.jupiter.api.Test;

class CrossingTest {

    @Test
    void wallsThatRunThroughEachOtherCross() {
        assertThat(new Plan().wall("A", 0, 0, 300, 0, 14).wall("B", 50, -80, 50, 80, 10).network().crossings())
                .containsExactly(crossing(Kind.CROSS, "A", "B", 50, 0));
    }

    /** The lines y = 3x/4 and y = 300 - 3x/4 cross at x = 200, y = 150. */
    @Test
    void slantedWallsCrossWhereTheirEquationsSay() {
        assertThat(new Plan().wall("A", 0, 0, 400, 300, 14).wall("B", 400, 0, 0, 300, 10).network().crossings())
                .containsExactly(crossing(Kind.CROSS, "A", "B", 200, 150));
    }

    @Test
    void wallsThatMeetDoNotCross() {
        Plan plan = new Plan().wall("A", 0, 0, 100, 0, 14).wall("B", 100, 0, 100, 80, 10).wall("C", 50, 0, 50, 80, 10)
                .wall("D", 100, 0, 200, 0, 10);
        assertThat(plan.network().crossings()).isEmpty();
    }

    /** 32 units are 0.1 mm, within which an end meets the wall although it is already on its far side. */
    @Test
    void anEndATenthOfAMillimetreBeyondTheCentreLineMeetsAndDoesNotCross() {
        CentreLine bar = new Plan().wall("A", 0, 0, 300, 0, 14).walls().get(0);
        CentreLine stem = new CentreLine("B", Length.ofInches(50), Length.ofUnits(-32), Length.ofInches(50),
                Length.ofInches(80), Length.ofInches(10));
        assertThat(WallNetwork.of(List.of(bar, stem)).crossings()).isEmpty();
        assertThat(WallNetwork.of(List.of(stem, bar)).crossings()).isEmpty();
        assertThat(WallNetwork.of(List.of(stem, bar)).nearMisses()).isEmpty();
    }

    @Test
    void aThirdWallThatEndsAtACrossingDoesNotHideIt() {
        Plan plan = new Plan().wall("A", -100, 0, 100, 0, 14).wall("B", 0, -100, 0, 100, 10).wall("C", 0, 0, 90, 90,
                10);
        assertThat(plan.network().crossings()).containsExactly(crossing(Kind.CROSS, "A", "B", 0, 0));
        assertThat(plan.network().meetingAt("C", Place.START).kind()).isEqualTo(WallMeeting.Kind.CROSS);
    }

    @Test
    void wallsWithACommonPartOverlap() {
        assertThat(new Plan().wall("A", 0, 0, 100, 0, 14).wall("B", 150, 0, 50, 0, 10).network().crossings())
                .containsExactly(crossing(Kind.OVERLAP, "A", "B", 50, 0));
    }

    @Test
    void aWallInsideAnotherOverlapsIt() {
        assertThat(new Plan().wall("A", 30, 0, 50, 0, 14).wall("B", 0, 0, 100, 0, 10).network().crossings())
                .containsExactly(crossing(Kind.OVERLAP, "A", "B", 30, 0));
    }

    @Test
    void theSameWallTwiceOverlaps() {
        assertThat(new Plan().wall("A", 10, 0, 100, 0, 14).wall("B", 100, 0, 10, 0, 10).network().crossings())
                .containsExactly(crossing(Kind.OVERLAP, "A", "B", 10, 0));
    }

    @Test
    void aWallThatStartsTogetherWithAnotherOverlapsIt() {
        assertThat(new Plan().wall("A", 0, 0, 100, 0, 14).wall("B", 0, 0, 60, 0, 10).network().crossings())
                .containsExactly(crossing(Kind.OVERLAP, "A", "B", 0, 0));
    }

    /** Half thicknesses of 7 in and 5 in: with centre lines 2 in apart they lie 10 in in each other. */
    @Test
    void wallsInLineByAFaceLieInEachOtherSideBySide() {
        WallNetwork network = new Plan().wall("A", 0, 0, 300, 0, 14).wall("B", 200, 2, 80, 2, 10).network();
        assertThat(network.crossings()).containsExactly(crossing(Kind.SIDE_BY_SIDE, "A", "B", 80, 2));
        assertThat(network.nearMisses()).as("they are not to be joined").isEmpty();
    }

    @Test
    void slantedWallsLieInEachOtherSideBySideToo() {
        Plan plan = new Plan().wall("A", 0, 0, 400, 300, 14).wall("B", 77, 64, 237, 184, 10);
        assertThat(plan.network().crossings()).extracting(Crossing::kind).containsExactly(Kind.SIDE_BY_SIDE);
    }

    @Test
    void wallsThatTouchWithTheirFacesDoNotLieInEachOther() {
        assertThat(new Plan().wall("A", 0, 0, 300, 0, 14).wall("B", 80, 12, 200, 12, 10).network().crossings())
                .isEmpty();
        assertThat(new Plan().wall("A", 0, 0, 300, 0, 14).wall("B", 80, 11, 200, 11, 10).network().crossings())
                .containsExactly(crossing(Kind.SIDE_BY_SIDE, "A", "B", 80, 11));
    }

    @Test
    void endThatGoesATouchTooFarBesideAnotherIsANearMiss() {
        WallNetwork network = new Plan().wall("A", 0, 0, 100, 0, 10).wall("B", 96, 3, 200, 3, 10).network();
        assertThat(network.crossings()).isEmpty();
        assertThat(network.nearMisses()).isNotEmpty();
    }

    private static Crossing crossing(Kind kind, String first, String second, long x, long y) {
        return new Crossing(kind, first, second, Length.ofInches(x), Length.ofInches(y));
    }
}
