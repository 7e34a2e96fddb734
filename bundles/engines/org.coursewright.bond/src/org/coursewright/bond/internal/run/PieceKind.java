package org.coursewright.bond.internal.run;

import java.util.ArrayList;
import java.util.List;

import org.coursewright.bond.Piece;

/**
 * Pieces of a set that are alike.
 *
 * @param length their length
 * @param count how many, at least one
 * @param origin where they come from
 */
public record PieceKind(long length, int count, Piece.Kind origin) {

    /** The kinds of a set: specials and cut pieces, and last the whole units if any. */
    public static List<PieceKind> of(PieceSet set, Masonry masonry) {
        List<PieceKind> kinds = new ArrayList<>();
        for (int special = 0; special < set.specials().length; special++) {
            if (set.specials()[special] > 0) {
                kinds.add(
                        new PieceKind(masonry.specials().get(special), set.specials()[special], Piece.Kind.SPECIAL));
            }
        }
        addCuts(kinds, set.cuts());
        if (set.wholes() > 0) {
            kinds.add(new PieceKind(masonry.whole(), set.wholes(), Piece.Kind.WHOLE));
        }
        return kinds;
    }

    private static void addCuts(List<PieceKind> kinds, long[] cuts) {
        int from = 0;
        for (int cut = 1; cut <= cuts.length; cut++) {
            if (cut == cuts.length || cuts[cut] != cuts[from]) {
                kinds.add(new PieceKind(cuts[from], cut - from, Piece.Kind.CUT));
                from = cut;
            }
        }
    }
}
