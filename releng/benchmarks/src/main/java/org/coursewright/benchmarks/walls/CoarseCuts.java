package org.coursewright.benchmarks.walls;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.PieceStock;
import org.coursewright.bond.WallFace;

/** The same building with cuts to the three inches only, so that everything can be tried. */
public final class CoarseCuts {

    private CoarseCuts() {
    }

    /** @return {@code request} with another cut step */
    public static BondRequest of(BondRequest request) {
        return new BondRequest(request.walls().stream().map(CoarseCuts::coarse).toList(), request.meetings());
    }

    private static WallFace coarse(WallFace wall) {
        PieceStock stock = wall.stock();
        PieceStock coarse = new PieceStock(stock.whole(), stock.specials(), stock.shortestPiece(),
                UnitType.quarters(12), stock.kerf());
        return new WallFace(wall.mark(), wall.length(), coarse, wall.rule(), wall.courses(), wall.start(), wall.end(),
                wall.obstacles());
    }
}
