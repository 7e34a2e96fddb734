package org.coursewright.takeoff.quantities;

import java.util.Objects;

/**
 * Pieces of one wall.
 *
 * @param wall its mark
 * @param pieces laid in it
 * @param lowPieces how many of them are in courses lower than the unit
 */
public record WallPieces(String wall, PieceTally pieces, long lowPieces) {

    public WallPieces {
        Objects.requireNonNull(wall, "wall");
        Objects.requireNonNull(pieces, "pieces");
    }

    static WallPieces of(WallQuantities measured) {
        return new WallPieces(measured.wall().mark(), measured.pieces(), measured.lowPieces());
    }
}
