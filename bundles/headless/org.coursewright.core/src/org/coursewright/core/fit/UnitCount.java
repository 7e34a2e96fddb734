package org.coursewright.core.fit;

import java.util.HashMap;
import java.util.List;
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

/** Counts what layouts take: units laid whole, as few as possible cut up for the cut pieces, specials. */
final class UnitCount {

    /** A wall has few lengths of pieces, so the bound is met almost at once. */
    private static final int SEARCH = 2_000;

    private final Map<String, PieceStock> stocks = new HashMap<>();
    private final CutPlanner planner = new CutPlanner(SEARCH);
    private final Progress progress;

    UnitCount(BondRequest request, Progress progress) {
        this.progress = progress;
        for (WallFace wall : request.walls()) {
            stocks.put(wall.mark(), wall.stock());
        }
    }

    UnitsTaken by(List<WallLayout> walls) {
        return walls.stream().map(this::by).reduce(UnitsTaken.NONE, UnitsTaken::plus);
    }

    UnitsTaken by(WallLayout layout) {
        long[] kinds = new long[Piece.Kind.values().length];
        TreeMap<Length, Long> cut = new TreeMap<>();
        for (Piece piece : pieces(layout)) {
            kinds[piece.kind().ordinal()]++;
            if (piece.kind() == Piece.Kind.CUT) {
                cut.merge(piece.length(), 1L, Long::sum);
            }
        }
        PieceStock stock = stocks.get(layout.mark());
        long cutUp = planner.plan(new CutStock(stock.whole(), stock.kerf(), false), cut, progress).units();
        long whole = kinds[Piece.Kind.WHOLE.ordinal()];
        long specials = kinds[Piece.Kind.SPECIAL.ordinal()];
        long cuts = kinds[Piece.Kind.CUT.ordinal()];
        return new UnitsTaken(whole + specials + cuts, whole, cutUp, specials, cuts);
    }

    private static Iterable<Piece> pieces(WallLayout layout) {
        return layout.courses().stream().flatMap(course -> course.runs().stream())
                .flatMap(run -> run.pieces().stream())::iterator;
    }
}
