package org.coursewright.core.fit;

import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;

import org.coursewright.bond.BondRequest;
import org.coursewright.bond.Piece;
import org.coursewright.bond.PieceStock;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;
import org.coursewright.measure.Length;
import org.coursewright.measure.Progress;
import org.coursewright.takeoff.nesting.CutPlanner;
import org.coursewright.takeoff.nesting.CutStock;

/** Counts the whole units that a wall takes: those laid whole, and as few as possible cut up for its cut pieces. */
final class BlocksTaken {

    /** A wall has few lengths of pieces, so the bound is met almost at once. */
    private static final int SEARCH = 2_000;

    private final Map<String, PieceStock> stocks = new HashMap<>();
    private final CutPlanner planner = new CutPlanner(SEARCH);

    BlocksTaken(BondRequest request) {
        for (WallFace wall : request.walls()) {
            stocks.put(wall.mark(), wall.stock());
        }
    }

    long by(WallLayout layout, Progress progress) {
        long whole = 0;
        TreeMap<Length, Long> cut = new TreeMap<>();
        for (Piece piece : pieces(layout)) {
            whole += piece.kind() == Piece.Kind.WHOLE ? 1 : 0;
            if (piece.kind() == Piece.Kind.CUT) {
                cut.merge(piece.length(), 1L, Long::sum);
            }
        }
        PieceStock stock = stocks.get(layout.mark());
        return whole + planner.plan(new CutStock(stock.whole(), stock.kerf(), false), cut, progress).units();
    }

    private static Iterable<Piece> pieces(WallLayout layout) {
        return layout.courses().stream().flatMap(course -> course.runs().stream())
                .flatMap(run -> run.pieces().stream())::iterator;
    }
}
