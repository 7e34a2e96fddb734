package org.coursewright.takeoff.quantities;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.entry;

import java.util.List;
import java.util.Random;

import org.coursewright.measure.Length;
import org.coursewright.measure.UnitCode;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.InvalidTakeoffException;
import org.coursewright.takeoff.Volume;
import org.coursewright.takeoff.quantities.LaidPiece.Kind;
import org.junit.jupiter.api.Test;

class WallTakeoffTest {

    private static final UnitShape BLOCK = new UnitShape("block", mm(290), mm(140), mm(90));

    /** Whole, whole, cut of 140 mm between a free end and other masonry: three joints of 10 mm, two beside the cut. */
    private static final LaidRun RUN = new LaidRun(mm(0), mm(750), mm(30), false, true, List.of(
            LaidPiece.square(mm(290), Kind.WHOLE), LaidPiece.square(mm(290), Kind.WHOLE),
            LaidPiece.square(mm(140), Kind.CUT)));

    @Test
    void mortarOfACourseIsSplitIntoBedHeadAndBesideCuts() {
        MortarVolumes mortar = measure(JointFill.FULL, RUN).mortar();
        assertThat(mortar.bed()).isEqualTo(Volume.of(mm(750), mm(10), mm(140)));
        assertThat(mortar.head()).isEqualTo(Volume.of(mm(10), mm(90), mm(140)));
        assertThat(mortar.besideCuts()).isEqualTo(Volume.of(mm(20), mm(90), mm(140)));
        assertThat(mortar.open()).isEqualTo(Volume.ZERO);
        // 1050 + 126 + 252 cm³
        assertThat(mortar.net().in(UnitCode.LITRE)).isEqualTo(Fraction.of("1.428"));
    }

    @Test
    void headJointsFilledByHalfTakeHalfTheMortar() {
        MortarVolumes mortar = measure(new JointFill(Fraction.ONE, Fraction.of(1, 2)), RUN).mortar();
        assertThat(mortar.net().in(UnitCode.LITRE)).isEqualTo(Fraction.of("1.239"));
        assertThat(mortar.open().in(UnitCode.LITRE)).isEqualTo(Fraction.of("0.189"));
    }

    @Test
    void piecesAreCountedByKindAndLength() {
        LaidRun other = new LaidRun(mm(1000), mm(440), mm(10), false, false, List.of(
                LaidPiece.square(mm(290), Kind.SPECIAL), LaidPiece.square(mm(140), Kind.CUT)));
        PieceTally pieces = measure(JointFill.FULL, RUN, other).pieces();
        assertThat(pieces.whole()).isEqualTo(2);
        assertThat(pieces.specials()).containsExactly(entry(mm(290), 1L));
        assertThat(pieces.cuts()).containsExactly(entry(mm(140), 2L));
        assertThat(pieces.total()).isEqualTo(5);
    }

    /** 200 mm at the bottom, 110 mm at the top: 155 mm in the mean, out of a blank of 200 mm. */
    @Test
    void pieceAlongARakeIsATrapezium() {
        LaidRun raked = new LaidRun(mm(0), mm(500), mm(10), false, false, List.of(
                LaidPiece.square(mm(290), Kind.WHOLE), new LaidPiece(mm(200), mm(110), Kind.CUT)));
        WallQuantities wall = measure(JointFill.FULL, raked);
        assertThat(wall.units()).isEqualTo(Volume.of(mm(290 + 155), mm(90), mm(140)));
        assertThat(wall.pieces().cuts()).containsExactly(entry(mm(200), 1L));
    }

    @Test
    void singlePieceBetweenFreeEndsHasNoHeadJoint() {
        LaidRun pier = new LaidRun(mm(0), mm(290), mm(0), false, false, List.of(LaidPiece.square(mm(290),
                Kind.WHOLE)));
        MortarVolumes mortar = measure(JointFill.FULL, pier).mortar();
        assertThat(mortar.head()).isEqualTo(Volume.ZERO);
        assertThat(mortar.besideCuts()).isEqualTo(Volume.ZERO);
        assertThat(mortar.net()).isEqualTo(Volume.of(mm(290), mm(10), mm(140)));
    }

    /**
     * Handbook O019, for any wall: what the take-off accounts for is the wall's volume, found here from outlines alone,
     * less the triangles that rakes take away.
     */
    @Test
    void unitsMortarAndOpenJointsAddUpToTheWall() {
        Random random = new Random(20261125);
        for (int i = 0; i < 400; i++) {
            LaidWall wall = Walls.random(random);
            JointFill fill = new JointFill(Fraction.of(random.nextInt(8), 7), Fraction.of(random.nextInt(4), 3));
            assertThat(new WallTakeoff(fill).measure(wall).masonry()).isEqualTo(outline(wall));
        }
    }

    @Test
    void runThatIsNotFilledIsRefusedWithItsLengths() {
        assertThatThrownBy(() -> new LaidRun(mm(0), mm(751), mm(30), false, true, RUN.pieces())).isInstanceOf(
                InvalidTakeoffException.class).hasMessageContaining("751 mm").hasMessageContaining("750 mm");
    }

    @Test
    void jointsWithoutAPlaceAreRefused() {
        assertThatThrownBy(() -> new LaidRun(mm(40), mm(300), mm(10), false, false, List.of(LaidPiece.square(mm(290),
                Kind.WHOLE)))).hasMessageContaining("40 mm").hasMessageContaining("10 mm");
    }

    @Test
    void rakedPieceThatIsNotCutIsRefused() {
        assertThatThrownBy(() -> new LaidPiece(mm(290), mm(200), Kind.WHOLE)).hasMessageContaining("raked");
    }

    @Test
    void wholeUnitOfAnotherLengthThanTheFaceIsRefused() {
        LaidRun run = new LaidRun(mm(0), mm(280), mm(0), false, false, List.of(LaidPiece.square(mm(280), Kind.WHOLE)));
        assertThatThrownBy(() -> measure(JointFill.FULL, run)).hasMessageContaining("Course 1 of wall W1")
                .hasMessageContaining("280 mm").hasMessageContaining("290 mm");
    }

    @Test
    void twoCoursesOfOneNumberAreRefused() {
        LaidCourse course = new LaidCourse(2, mm(90), mm(10), List.of(RUN));
        assertThatThrownBy(() -> new LaidWall("W1", BLOCK, mm(140), List.of(course, course))).hasMessageContaining(
                "two courses 2");
    }

    @Test
    void jointFilledByMoreThanAllIsRefused() {
        assertThatThrownBy(() -> new JointFill(Fraction.of(3, 2), Fraction.ONE)).hasMessageContaining("bed")
                .hasMessageContaining("3/2");
    }

    /** Joints are shared out one by one: whole, cut, whole, whole has two beside the cut and one that is not. */
    @Test
    void jointIsBesideACutIfEitherNeighbourIsCut() {
        LaidPiece whole = LaidPiece.square(mm(290), Kind.WHOLE);
        LaidPiece cut = LaidPiece.square(mm(100), Kind.CUT);
        assertThat(run(false, false, whole, cut, whole, whole).jointsBesideCuts()).isEqualTo(2);
        assertThat(run(false, false, cut, cut, cut).jointsBesideCuts()).isEqualTo(2);
        assertThat(run(true, true, whole, cut).jointsBesideCuts()).isEqualTo(2);
        assertThat(run(true, false, cut).jointsBesideCuts()).isEqualTo(1);
        assertThat(run(true, true, whole, whole).jointsBesideCuts()).isZero();
        assertThat(run(true, true, whole, whole).jointCount()).isEqualTo(3);
    }

    private static LaidRun run(boolean jointAtStart, boolean jointAtEnd, LaidPiece... pieces) {
        Length length = List.of(pieces).stream().map(LaidPiece::length).reduce(Length.ZERO, Length::plus);
        return new LaidRun(mm(0), length, mm(0), jointAtStart, jointAtEnd, List.of(pieces));
    }

    @Test
    void wallThickerThanItsUnitIsRefused() {
        assertThatThrownBy(() -> new LaidWall("W1", BLOCK, mm(200), List.of())).hasMessageContaining("W1")
                .hasMessageContaining("200 mm");
    }

    @Test
    void courseHigherThanTheUnitIsRefused() {
        assertThatThrownBy(() -> new LaidWall("W1", BLOCK, mm(140), List.of(new LaidCourse(3, mm(91), mm(10),
                List.of())))).hasMessageContaining("Course 3 of wall W1").hasMessageContaining("91 mm");
    }

    private static Volume outline(LaidWall wall) {
        Volume volume = Volume.ZERO;
        for (LaidCourse course : wall.courses()) {
            Length high = course.height().plus(course.bedJoint());
            for (LaidRun run : course.runs()) {
                volume = volume.plus(Volume.of(run.length(), high, wall.thickness()));
                for (LaidPiece piece : run.pieces()) {
                    Length setBack = piece.length().minus(piece.topLength());
                    volume = volume.minus(Volume.of(setBack, course.height(), wall.thickness()).times(
                            Fraction.of(1, 2)));
                }
            }
        }
        return volume;
    }

    private static WallQuantities measure(JointFill fill, LaidRun... runs) {
        LaidCourse course = new LaidCourse(1, mm(90), mm(10), List.of(runs));
        return new WallTakeoff(fill).measure(new LaidWall("W1", BLOCK, mm(140), List.of(course)));
    }

    private static Length mm(long millimetres) {
        return Length.ofMillimetres(millimetres);
    }
}
