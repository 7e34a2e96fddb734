package org.coursewright.benchmarks.oracle;

import java.util.Set;
import java.util.TreeSet;

import org.coursewright.bond.Piece;
import org.coursewright.bond.PieceStock;
import org.coursewright.measure.Length;

/**
 * How long pieces may be (1/320 mm).
 *
 * @param whole the whole unit
 * @param uncut the whole unit and the stocked specials
 * @param cut what may be cut and is not stocked
 */
record PieceLengths(long whole, TreeSet<Long> uncut, TreeSet<Long> cut) {

    static PieceLengths of(PieceStock stock) {
        TreeSet<Long> uncut = new TreeSet<>(Set.of(stock.whole().units()));
        stock.specials().stream().map(Length::units).forEach(uncut::add);
        TreeSet<Long> cut = new TreeSet<>();
        long step = stock.cutStep().units();
        long first = -Math.floorDiv(-stock.shortestPiece().units(), step) * step;
        for (long length = first; length < stock.whole().units(); length += step) {
            if (!uncut.contains(length)) {
                cut.add(length);
            }
        }
        return new PieceLengths(stock.whole().units(), uncut, cut);
    }

    /** @return where a piece so long comes from, given whether a rake crosses it */
    Piece.Kind kind(long length, boolean crossed) {
        if (crossed || cut.contains(length)) {
            return Piece.Kind.CUT;
        }
        return length == whole ? Piece.Kind.WHOLE : Piece.Kind.SPECIAL;
    }

    TreeSet<Long> all() {
        TreeSet<Long> all = new TreeSet<>(uncut);
        all.addAll(cut);
        return all;
    }
}
