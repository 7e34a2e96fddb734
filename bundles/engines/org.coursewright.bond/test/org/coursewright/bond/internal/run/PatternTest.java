package org.coursewright.bond.internal.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.coursewright.bond.WallBuilder.in;
import static org.coursewright.bond.WallBuilder.rule;
import static org.coursewright.bond.WallBuilder.stock;

import org.coursewright.bond.Piece;
import org.coursewright.bond.RunEnd;
import org.junit.jupiter.api.Test;

/** Patterns of units of 14 in; by hand. */
class PatternTest {

    private static final Masonry MASONRY = Masonry.of(stock("14"), rule("3 1/2", "3/8", "1/2", "3/4"));
    private static final RunShape SHAPE = new RunShape(in("60").units(), RunEnd.JOINT, RunEnd.FACE, 0, 0,
            RunPins.NONE);

    private static Pattern pattern(String jointTotal, String... lengths) {
        long[] pieces = new long[lengths.length];
        Piece.Kind[] kinds = new Piece.Kind[lengths.length];
        for (int piece = 0; piece < lengths.length; piece++) {
            pieces[piece] = in(lengths[piece]).units();
            kinds[piece] = pieces[piece] == MASONRY.whole() ? Piece.Kind.WHOLE : Piece.Kind.CUT;
        }
        return new Pattern(SHAPE, MASONRY, pieces, kinds, in(jointTotal).units());
    }

    @Test
    void patternIsCutAsAnotherWhereverWholeUnitsLie() {
        Pattern pattern = pattern("2", "14", "6", "14", "10");

        assertThat(pattern.isCutAs(pattern("2", "6", "14", "14", "10"))).isTrue();
        assertThat(pattern.isCutAs(pattern("2", "6", "10", "14", "14"))).isTrue();
    }

    @Test
    void otherLengthsOrderOrJointsAreCutOtherwise() {
        Pattern pattern = pattern("2", "14", "6", "14", "10");

        assertThat(pattern.isCutAs(pattern("2", "14", "6", "14", "9"))).isFalse();
        assertThat(pattern.isCutAs(pattern("2", "14", "10", "14", "6"))).isFalse();
        assertThat(pattern.isCutAs(pattern("2", "14", "6", "14", "14"))).isFalse();
        assertThat(pattern.isCutAs(pattern("2 1/2", "14", "6", "14", "10"))).isFalse();
    }

    /** The joint at the start has no piece before it: 1/2 in, 14 1/2 in, then the cut piece of 6 in. */
    @Test
    void jointsFollowThePieces() {
        Pattern pattern = pattern("2", "14", "6", "14", "10");

        assertThat(pattern.joints()).isEqualTo(4);
        assertThat(pattern.jointStart(0)).isZero();
        assertThat(pattern.jointStart(1)).isEqualTo(4 * in("14 1/2").units());
        assertThat(pattern.jointStart(2)).isEqualTo(4 * in("21").units());
        assertThat(pattern.jointStart(3)).isEqualTo(4 * in("35 1/2").units());
    }
}
