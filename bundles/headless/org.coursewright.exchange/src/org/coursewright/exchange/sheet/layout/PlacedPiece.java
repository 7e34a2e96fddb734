package org.coursewright.exchange.sheet.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.coursewright.bond.Piece;
import org.coursewright.bond.Run;
import org.coursewright.bond.RunEnd;
import org.coursewright.measure.Length;

/** A piece where it lies along the wall, to the nearest 1/320 mm. */
record PlacedPiece(Piece piece, Length from, Length to) {

    /** @return the pieces of a run from start to end */
    static List<PlacedPiece> of(Run run) {
        List<PlacedPiece> placed = new ArrayList<>();
        Length masonry = Length.ZERO;
        long joints = run.startsWith() == RunEnd.JOINT ? 1 : 0;
        for (Piece piece : run.pieces()) {
            Length from = run.from().plus(masonry).plus(joints(run, joints));
            placed.add(new PlacedPiece(piece, from, from.plus(piece.length())));
            masonry = masonry.plus(piece.length());
            joints++;
        }
        return placed;
    }

    /** @return positions of both edges */
    Stream<Length> edges() {
        return Stream.of(from, to);
    }

    private static Length joints(Run run, long count) {
        return run.joint().map(joint -> Rounding.nearest(joint.total(), count, joint.count())).orElse(Length.ZERO);
    }
}
