package org.coursewright.core.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;

import org.coursewright.measure.Length;
import org.junit.jupiter.api.Test;

class WallFacesTest {

    /**
     * A building 24 ft by 16 ft outside, its long walls 14 in and its short walls 10 in thick. Inside it is 288 - 2 x 10
     * = 268 in by 192 - 2 x 14 = 164 in. Walls run anticlockwise, so the inside is on their left.
     */
    @Test
    void aRectangleIsAsLongOutsideAndInsideAsItsOutlineSays() {
        WallNetwork network = new Plan().wall("S", 5, 7, 283, 7, 14).wall("E", 283, 7, 283, 185, 10)
                .wall("N", 283, 185, 5, 185, 14).wall("W", 5, 185, 5, 7, 10).network();
        assertThat(network.faces("S")).isEqualTo(faces("S", 278, 5, 5, 288, 268, 288));
        assertThat(network.faces("E")).isEqualTo(faces("E", 178, 7, 7, 192, 164, 192));
        assertThat(network.faces("N")).isEqualTo(faces("N", 278, 5, 5, 288, 268, 288));
        assertThat(network.faces("W")).isEqualTo(faces("W", 178, 7, 7, 192, 164, 192));
    }

    /** Between two 14 in walls 178 in apart on their centre lines a partition has 178 - 14 = 164 in. */
    @Test
    void aStemEndsAtTheNearFaces() {
        WallNetwork network = new Plan().wall("S", 0, 0, 300, 0, 14).wall("N", 0, 178, 300, 178, 14)
                .wall("P", 100, 0, 100, 178, 6).network();
        assertThat(network.faces("P")).isEqualTo(faces("P", 178, -7, -7, 164, 164, 164));
        assertThat(network.faces("S")).isEqualTo(faces("S", 300, 0, 0, 300, 300, 300));
    }

    /** The thicker half of the bar is 14 in, so the stem stops 7 in short; walls in line butt at the point. */
    @Test
    void aStemAgainstTwoWallsInLineEndsAtTheThickerOne() {
        WallNetwork network = new Plan().wall("A", 0, 0, 50, 0, 10).wall("B", 50, 0, 100, 0, 14)
                .wall("P", 50, 80, 50, 0, 6).network();
        assertThat(network.faces("P")).isEqualTo(faces("P", 80, 0, -7, 73, 73, 73));
        assertThat(network.faces("A")).isEqualTo(faces("A", 50, 0, 0, 50, 50, 50));
    }

    @Test
    void atACrossTheFirstPairInLineRunsThrough() {
        WallNetwork network = new Plan().wall("W", -50, 0, 0, 0, 14).wall("N", 0, 0, 0, 80, 10)
                .wall("E", 0, 0, 50, 0, 14).wall("S", 0, 0, 0, -80, 10).network();
        assertThat(network.faces("W").endExtension()).isEqualTo(Length.ZERO);
        assertThat(network.faces("N").startExtension()).isEqualTo(Length.ofInches(-7));
        assertThat(network.faces("S").startExtension()).isEqualTo(Length.ofInches(-7));
    }

    /**
     * Moving the sides of a triangle outwards by d gives a similar one whose inscribed circle has radius r + d (Euclid,
     * Elements IV.4 and VI.4). Sides 300, 400 and 500 in have r = (300 + 400 - 500) / 2 = 100 in; walls 10 in thick move
     * them by 5 in, so outside they are 1.05 and inside 0.95 times as long.
     */
    @Test
    void aTriangleIsSimilarOutsideAndInside() {
        WallNetwork network = new Plan().wall("A", 0, 0, 400, 0, 10).wall("B", 400, 0, 0, 300, 10)
                .wall("C", 0, 300, 0, 0, 10).network();
        assertThat(network.faces("A").outer()).isEqualTo(Length.ofInches(420));
        assertThat(network.faces("A").right()).isEqualTo(Length.ofInches(420));
        assertThat(network.faces("A").left()).isEqualTo(Length.ofInches(380));
        assertThat(network.faces("B").outer()).isEqualTo(Length.ofInches(525));
        assertThat(network.faces("B").left()).isEqualTo(Length.ofInches(475));
        assertThat(network.faces("C").outer()).isEqualTo(Length.ofInches(315));
        assertThat(network.faces("C").left()).isEqualTo(Length.ofInches(285));
    }

    /** One inch in 250 off square changes nothing. */
    @Test
    void whatCountsAsSquareIsTakenAsExactlySquare() {
        WallNetwork corner = new Plan().wall("A", 0, 0, 100, 0, 10).wall("B", 0, 0, 1, 250, 14).network();
        assertThat(corner.faces("A").startExtension()).isEqualTo(Length.ofInches(7));
        assertThat(corner.faces("B").startExtension()).isEqualTo(Length.ofInches(5));
        WallNetwork tee = new Plan().wall("A", -100, 0, 100, 0, 10).wall("B", 0, 0, 1, 250, 14).network();
        assertThat(tee.faces("B").startExtension()).isEqualTo(Length.ofInches(-5));
        assertThat(tee.faces("B").left()).isEqualTo(tee.faces("B").right());
    }

    /** cos a = 4/5, sin a = 3/5: (14 + 10 x 4/5) / (6/5) = 55/3 in and (10 + 14 x 4/5) / (6/5) = 53/3 in. */
    @Test
    void atASkewCornerOfTwoThicknessesEachGoesToTheOuterCorner() {
        WallNetwork network = new Plan().wall("A", 0, 0, 100, 0, 10).wall("B", 0, 0, 80, 60, 14).network();
        assertThat(network.faces("A").startExtension().units()).isEqualTo(Math.round(8128 * 55 / 3.0));
        assertThat(network.faces("B").startExtension().units()).isEqualTo(Math.round(8128 * 53 / 3.0));
    }

    /** 30 degrees, of which no plan has exact coordinates: 5 in x cot 15 degrees = 18.6603 in. */
    @Test
    void aCornerOfThirtyDegreesIsRightToThreeThousandthsOfAMillimetre() {
        Plan plan = new Plan().wall("A", 0, 0, 100, 0, 10);
        long x = Math.round(Math.cos(Math.toRadians(30)) * 1_000_000);
        plan.walls().add(new CentreLine("B", Length.ZERO, Length.ZERO, Length.ofUnits(x), Length.ofUnits(500_000),
                Length.ofInches(10)));
        WallNetwork network = plan.network();
        long expected = Math.round(5 * 8128 / Math.tan(Math.toRadians(15)));
        assertThat(network.faces("A").startExtension().units()).isCloseTo(expected, within(1L));
        assertThat(network.meetingAt("A", Place.START).degrees()).isEqualTo("30.0");
        assertThat(network.faces("B").centreLine().units()).isEqualTo(1_000_000);
    }

    /**
     * A stem at cos a = 4/5, sin a = 3/5 to a bar 12 in thick stops 6 / (3/5) = 10 in short on its centre line. Its faces,
     * 3 in to either side, stop 3 x cot a = 4 in later and sooner: it slants to the right, so the right one at 14 in.
     */
    @Test
    void aSkewStemIsLongerOnOneFace() {
        WallNetwork network = new Plan().wall("A", -200, 0, 200, 0, 12).wall("P", 0, 0, 80, 60, 6).network();
        assertThat(network.faces("P")).isEqualTo(faces("P", 100, -10, 0, 90, 94, 86));
    }

    /** Equal walls at 10 degrees would meet t x cot 5 degrees / 2 = 5.7 t out; they are cut off at 2 t. */
    @Test
    void aSharpPointIsCutOffAtBothThicknesses() {
        WallNetwork network = new Plan().wall("A", 0, 0, 1000, 0, 10).wall("B", 0, 0, 1000, 176, 10).network();
        assertThat(network.faces("A").startExtension()).isEqualTo(Length.ofInches(20));
    }

    @Test
    void wallsThatCannotBeWallsAreLeftOutAndTold() {
        WallNetwork network = new Plan().wall("A", 0, 0, 100, 0, 10).wall("Z", 5, 5, 5, 5, 10)
                .wall("A", 0, 0, 0, 80, 10).wall("T", 0, 0, 0, 80, 0).wall("F", 0, 0, 0, 400_000, 10).network();
        assertThat(network.leftOut()).containsExactly(new LeftOut("Z", LeftOut.Reason.NO_LENGTH),
                new LeftOut("A", LeftOut.Reason.SAME_MARK), new LeftOut("T", LeftOut.Reason.NO_THICKNESS),
                new LeftOut("F", LeftOut.Reason.TOO_FAR));
        assertThat(network.faces("A").outer()).isEqualTo(Length.ofInches(100));
        assertThatThrownBy(() -> network.faces("Z")).isInstanceOf(IllegalArgumentException.class)
                .hasMessage("There is no wall Z in the network.");
    }

    @Test
    void aWallOfOneMillimetreHasNoLengthAndALongerOneHas() {
        assertThat(WallNetwork.of(List.of(wallOf(320))).leftOut())
                .containsExactly(new LeftOut("M", LeftOut.Reason.NO_LENGTH));
        assertThat(WallNetwork.of(List.of(wallOf(321))).faces("M").outer()).isEqualTo(Length.ofUnits(321));
    }

    private static CentreLine wallOf(long units) {
        return new CentreLine("M", Length.ZERO, Length.ZERO, Length.ofUnits(units), Length.ZERO, Length.ofInches(10));
    }

    private static WallFaces faces(String mark, long... inches) {
        return new WallFaces(mark, Length.ofInches(inches[0]), Length.ofInches(inches[1]), Length.ofInches(inches[2]),
                Length.ofInches(inches[3]), Length.ofInches(inches[4]), Length.ofInches(inches[5]));
    }
}
