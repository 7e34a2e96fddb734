package org.coursewright.bond.internal.refit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.coursewright.bond.WallBuilder.in;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.coursewright.bond.Piece;
import org.coursewright.bond.RunEnd;
import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.Pattern;
import org.coursewright.bond.internal.run.RunPins;
import org.coursewright.bond.internal.run.RunShape;
import org.junit.jupiter.api.Test;

/** Runs that have become a little longer or shorter, units of 14 in, joints of 1/2 in. */
class RunRefitTest {

    private static final long UNIT = in("14").units();

    private static Masonry masonry(String least, String most) {
        return new Masonry(UNIT, List.of(in("6 3/4").units()), in("3").units(), in("1/4").units(), 0,
                in("3 1/2").units(), in(least).units(), in("1/2").units(), in(most).units());
    }

    private static RunShape run(String length) {
        return new RunShape(in(length).units(), RunEnd.FACE, RunEnd.FACE, 0, 0, RunPins.NONE);
    }

    /** Three units and two joints: 43 in. */
    private static Pattern threeUnits(Masonry masonry) {
        Piece.Kind[] kinds = {Piece.Kind.WHOLE, Piece.Kind.WHOLE, Piece.Kind.WHOLE};
        return new Pattern(run("43"), masonry, new long[]{UNIT, UNIT, UNIT}, kinds, in("1").units());
    }

    private static List<Pattern> refitted(Masonry masonry, String length) {
        return refitted(masonry, run(length));
    }

    private static List<Pattern> refitted(Masonry masonry, RunShape shape) {
        return new RunRefit(Optional.of(threeUnits(masonry)), shape, masonry, new FewestCuts(shape, masonry).orders())
                .patterns();
    }

    /** Two joints of 5/8 in each. */
    @Test
    void jointsTakeUpALittle() {
        assertThat(refitted(masonry("3/8", "3/4"), "43 1/4")).anySatisfy(pattern -> {
            assertThat(pattern.cuts()).isZero();
            assertThat(pattern.pieces()).containsExactly(UNIT, UNIT, UNIT);
            assertThat(pattern.jointTotal()).isEqualTo(in("1 1/4").units());
        });
    }

    /** 42 3/4 in, joints being 1/2 in throughout: one of the units is cut to 13 3/4 in, wherever it lies. */
    @Test
    void oneUnitIsCutWhereJointsCannotTakeItUp() {
        List<Pattern> found = refitted(masonry("1/2", "1/2"), "42 3/4");

        assertThat(found).isNotEmpty().allSatisfy(pattern -> assertThat(pattern.cuts()).isPositive());
        for (int place = 0; place < 3; place++) {
            long[] pieces = {UNIT, UNIT, UNIT};
            pieces[place] = in("13 3/4").units();
            assertThat(found).anySatisfy(pattern -> assertThat(pattern.pieces()).containsExactly(pieces));
        }
    }

    /** Four units and three joints: 57 1/2 in. */
    @Test
    void anotherUnitIsPutIn() {
        assertThat(refitted(masonry("1/2", "1/2"), "57 1/2").get(0).pieces()).containsExactly(UNIT, UNIT, UNIT, UNIT);
    }

    /** What was not filled before is filled with the fewest cuts: four units and three joints. */
    @Test
    void whatWasNotFilledIsFilledAfresh() {
        Masonry masonry = masonry("1/2", "1/2");
        RunShape shape = run("57 1/2");
        List<long[]> fewest = new FewestCuts(shape, masonry).orders();

        assertThat(new RunRefit(Optional.empty(), shape, masonry, fewest).patterns())
                .anySatisfy(pattern -> assertThat(pattern.pieces()).containsExactly(UNIT, UNIT, UNIT, UNIT));
    }

    /** A half of 6 3/4 in in place of a unit: 35 3/4 in. */
    @Test
    void aSpecialTakesThePlaceOfAUnit() {
        Pattern cheapest = refitted(masonry("1/2", "1/2"), "35 3/4").get(0);

        assertThat(cheapest.cuts()).isZero();
        assertThat(cheapest.kinds()).contains(Piece.Kind.SPECIAL);
    }

    /** Two units and a joint of 1/2 in leave 2 1/2 in, of which no piece can be cut; with one unit no two pieces do. */
    @Test
    void whatNothingFillsIsNotFilled() {
        assertThat(refitted(masonry("1/2", "1/2"), "2")).isEmpty();
    }

    @Test
    void everyFillingAddsUpWithJointsInRangeAndPiecesThatCanBeCut() {
        Masonry masonry = masonry("3/8", "3/4");
        for (int quarters = 4; quarters < 400; quarters++) {
            RunShape shape = new RunShape(in("1/4").units() * quarters, RunEnd.FACE, RunEnd.JOINT, 0, 0, RunPins.NONE);
            for (Pattern pattern : refitted(masonry, shape)) {
                assertThat(Arrays.stream(pattern.pieces()).sum() + pattern.jointTotal()).isEqualTo(shape.length());
                assertThat(pattern.joints()).isEqualTo(pattern.pieces().length);
                assertThat(pattern.jointTotal()).isBetween(masonry.least() * pattern.joints(),
                        masonry.most() * pattern.joints());
                assertThat(Arrays.stream(pattern.pieces()).filter(piece -> piece != UNIT).boxed())
                        .allMatch(piece -> piece == in("6 3/4").units() || piece >= in("3").units() && piece < UNIT
                                && piece % in("1/4").units() == 0);
            }
        }
    }
}
