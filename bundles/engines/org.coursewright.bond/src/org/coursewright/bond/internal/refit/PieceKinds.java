package org.coursewright.bond.internal.refit;

import java.util.Arrays;

import org.coursewright.bond.Piece;
import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.Preference;

/** What pieces of one masonry come to, by their lengths: those neither whole nor special are cut. */
final class PieceKinds {

    /** How long pieces are together, how many of them are cut, and what is to be said for them by {@link Preference}. */
    record Sum(long length, int cuts, int preference) {

        Sum plus(Sum other) {
            return new Sum(length + other.length, cuts + other.cuts, preference + other.preference);
        }

        Sum minus(Sum other) {
            return new Sum(length - other.length, cuts - other.cuts, preference - other.preference);
        }
    }

    private final Masonry masonry;
    private final long[] specials;

    PieceKinds(Masonry masonry) {
        this.masonry = masonry;
        specials = masonry.specials().stream().mapToLong(Long::longValue).toArray();
    }

    /** Lengths of specials; not to be changed. */
    long[] specials() {
        return specials;
    }

    Sum sum(long[] pieces) {
        Sum sum = new Sum(0, 0, 0);
        for (long piece : pieces) {
            sum = piece == masonry.whole()
                    ? new Sum(sum.length() + piece, sum.cuts(), sum.preference())
                    : sum.plus(sum(piece));
        }
        return sum;
    }

    /** Of one piece. */
    Sum sum(long length) {
        Piece.Kind kind = kind(length);
        int preference = Preference.of(masonry, new long[]{length}, new Piece.Kind[]{kind}, 0, 0);
        return new Sum(length, kind == Piece.Kind.CUT ? 1 : 0, preference);
    }

    Piece.Kind[] kinds(long[] pieces) {
        Piece.Kind[] kinds = new Piece.Kind[pieces.length];
        Arrays.setAll(kinds, piece -> kind(pieces[piece]));
        return kinds;
    }

    Piece.Kind kind(long length) {
        if (length == masonry.whole()) {
            return Piece.Kind.WHOLE;
        }
        for (long special : specials) {
            if (length == special) {
                return Piece.Kind.SPECIAL;
            }
        }
        return Piece.Kind.CUT;
    }
}
