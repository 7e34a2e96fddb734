package org.coursewright.core.bond;

import static org.assertj.core.api.Assertions.assertThat;
import static org.coursewright.core.PlanBuilder.in;

import java.util.List;

import org.junit.jupiter.api.Test;

class WallTopTest {

    private static final WallTop GABLE = new WallTop(in("200"), List.of(new WallTop.Point(in("0"), in("90")),
            new WallTop.Point(in("100"), in("140")), new WallTop.Point(in("200"), in("90"))));

    @Test
    void squarePartIsAsLongAsTheWall() {
        assertThat(GABLE.at(in("45"))).contains(new WallTop.Extent(in("0"), in("200")));
        assertThat(GABLE.at(in("90"))).contains(new WallTop.Extent(in("0"), in("200")));
    }

    @Test
    void gableNarrowsBySimilarTriangles() {
        // Half way up a rise of 50 in the gable is half as long.
        assertThat(GABLE.at(in("115"))).contains(new WallTop.Extent(in("50"), in("150")));
    }

    @Test
    void lowestPlaceUnderARakeIsAtOneEndOfTheStretch() {
        // The gable rises by one in two, over the whole stretch up to its apex.
        assertThat(GABLE.lowestBetween(in("20"), in("60"))).isEqualTo(in("100"));
        assertThat(GABLE.lowestBetween(in("90"), in("190"))).isEqualTo(in("95"));
        assertThat(GABLE.lowestBetween(in("100"), in("100"))).isEqualTo(in("140"));
    }

    @Test
    void lowestPlaceIsRoundedDownAndBelowAStep() {
        WallTop stepped = new WallTop(in("20"), List.of(new WallTop.Point(in("0"), in("0")),
                new WallTop.Point(in("3"), in("1")), new WallTop.Point(in("3"), in("9")),
                new WallTop.Point(in("20"), in("9"))));

        // One third of an inch is 2709 1/3 units.
        assertThat(stepped.lowestBetween(in("1"), in("2")).units()).isEqualTo(2709);
        assertThat(stepped.lowestBetween(in("3"), in("10"))).isEqualTo(in("1"));
        assertThat(stepped.lowestBetween(in("3 1/16"), in("20"))).isEqualTo(in("9"));
    }

    @Test
    void peakIsAPointAndAboveItIsNothing() {
        assertThat(GABLE.at(in("140"))).contains(new WallTop.Extent(in("100"), in("100")));
        assertThat(GABLE.at(in("140 1/16"))).isEmpty();
    }

    @Test
    void extentIsRoundedTowardsTheMasonry() {
        WallTop steep = new WallTop(in("10"),
                List.of(new WallTop.Point(in("0"), in("0")), new WallTop.Point(in("10"), in("3"))));

        WallTop.Extent extent = steep.at(in("1")).orElseThrow();

        // 10/3 in is 27093 1/3 units.
        assertThat(extent.from().units()).isEqualTo(27094);
        assertThat(extent.to()).isEqualTo(in("10"));
    }

    @Test
    void dipBetweenTwoPeaksIsNoticed() {
        WallTop dipping = new WallTop(in("30"), List.of(new WallTop.Point(in("0"), in("90")),
                new WallTop.Point(in("10"), in("80")), new WallTop.Point(in("30"), in("90"))));

        assertThat(dipping.hasOnePeak()).isFalse();
        assertThat(GABLE.hasOnePeak()).isTrue();
    }
}
