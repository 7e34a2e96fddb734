package org.coursewright.core.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.coursewright.core.PlanBuilder.in;

import java.util.List;
import java.util.Optional;

import org.coursewright.bond.Course;
import org.coursewright.bond.Piece;
import org.coursewright.bond.Run;
import org.coursewright.bond.RunEnd;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthRatio;
import org.junit.jupiter.api.Test;

/** A run of two units of 14 in with a joint of 1/2 in: 0 to 14 and 14 1/2 to 28 1/2 in. */
class RakedTopsTest {

    @Test
    void levelCourseIsAsLongAtTheTop() {
        assertThat(tops("0", "28 1/2", Piece.Kind.WHOLE)).containsExactly(in("14"), in("14"));
    }

    @Test
    void rakeAcrossTheFirstPieceShortensItsTop() {
        assertThat(tops("12", "28 1/2", Piece.Kind.CUT)).containsExactly(in("2"), in("14"));
    }

    @Test
    void pieceThatEndsBelowTheRakeHasNoLengthAtTheTop() {
        assertThat(tops("20", "28 1/2", Piece.Kind.CUT)).containsExactly(Length.ZERO, in("8 1/2"));
    }

    @Test
    void rakeAtTheEndCountsFromTheOtherSide() {
        assertThat(tops("0", "20", Piece.Kind.CUT)).containsExactly(in("14"), in("5 1/2"));
        assertThat(tops("0", "14 1/4", Piece.Kind.CUT)).containsExactly(in("14"), Length.ZERO);
    }

    @Test
    void bothRakesMeetInThePeak() {
        assertThat(tops("13", "13", Piece.Kind.CUT)).containsExactly(Length.ZERO, Length.ZERO);
    }

    private static List<Length> tops(String topFrom, String topTo, Piece.Kind kind) {
        Course course = new Course(1, 1, Length.ZERO, in("4 1/2"), Length.ZERO, in("28 1/2"), in(topFrom), in(topTo));
        Piece piece = new Piece(in("14"), kind);
        return RakedTops.of(new Run(Length.ZERO, in("28 1/2"), RunEnd.FACE, RunEnd.FACE,
                Optional.of(new LengthRatio(in("1/2"), 1)), 1, List.of(piece, piece)), course);
    }
}
