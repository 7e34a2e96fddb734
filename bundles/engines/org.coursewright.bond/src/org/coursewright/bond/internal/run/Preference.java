package org.coursewright.bond.internal.run;

import org.coursewright.bond.Piece;
import org.coursewright.bond.internal.choice.WallCost;

/**
 * What decides between patterns with equally many cuts: blocks used for cuts first (two short cuts share one), then how
 * far the joint is from the nominal, then few specials. Less is better; the order of pieces does not matter.
 */
public final class Preference {

    private static final int BLOCK = 8_000;
    private static final int UNEVEN_JOINT = 2_000;

    private Preference() {
    }

    /** The preference of pieces with their joints; lengths in 1/320 mm. */
    public static int of(Masonry masonry, long[] pieces, Piece.Kind[] kinds, int joints, long jointTotal) {
        long cost = 0;
        for (int piece = 0; piece < pieces.length; piece++) {
            if (kinds[piece] == Piece.Kind.CUT) {
                cost += cut(masonry, pieces[piece]);
            } else if (kinds[piece] == Piece.Kind.SPECIAL) {
                cost++;
            }
        }
        return bounded(cost + uneven(masonry, joints, jointTotal));
    }

    /** The same for pieces not yet in order; those under a rake may add to it. */
    public static int of(Masonry masonry, PieceSet set) {
        long cost = set.specialCount();
        for (long cut : set.cuts()) {
            cost += cut(masonry, cut);
        }
        return bounded(cost + uneven(masonry, set.joints(), set.jointTotal()));
    }

    private static long cut(Masonry masonry, long length) {
        return masonry.halves(length) ? BLOCK / 2 : BLOCK;
    }

    private static long uneven(Masonry masonry, int joints, long jointTotal) {
        long range = Math.max(masonry.most() - masonry.least(), 1) * Math.max(joints, 1);
        return Math.abs(jointTotal - masonry.nominal() * joints) * UNEVEN_JOINT / range;
    }

    private static int bounded(long cost) {
        return (int) Math.min(cost, WallCost.MOST_PREFERENCE);
    }
}
