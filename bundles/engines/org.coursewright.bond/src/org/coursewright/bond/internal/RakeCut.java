package org.coursewright.bond.internal;

import org.coursewright.bond.Piece;

/** Marks the pieces that reach under a rake as cut: each takes one cut, wherever the rake crosses it. */
final class RakeCut {

    private RakeCut() {
    }

    /** @return {@code kinds} with every piece that lies wholly or partly under a rake marked as cut */
    static Piece.Kind[] mark(RunShape shape, long[] pieces, Piece.Kind[] kinds, PieceSet set) {
        if (!shape.isRaked()) {
            return kinds;
        }
        Piece.Kind[] marked = kinds.clone();
        long parts = Math.max(set.joints(), 1);
        long position = shape.startJoints() * set.jointTotal();
        for (int piece = 0; piece < pieces.length; piece++) {
            long to = position + pieces[piece] * parts;
            if (position < shape.rakeStart() * parts || to > (shape.length() - shape.rakeEnd()) * parts) {
                marked[piece] = Piece.Kind.CUT;
            }
            position = to + set.jointTotal();
        }
        return marked;
    }
}
