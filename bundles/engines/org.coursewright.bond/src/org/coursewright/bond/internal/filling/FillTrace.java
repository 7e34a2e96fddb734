package org.coursewright.bond.internal.filling;

import java.util.List;

import org.coursewright.bond.Piece;
import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.Pattern;
import org.coursewright.bond.internal.run.RunShape;

/** Walks back through a {@link FillTable} and gathers fillings, those with whole units last first. */
final class FillTrace {

    private final FillTable table;
    private final RunShape shape;
    private final Masonry masonry;
    private final Gauge gauge;
    private final int most;
    private final List<Pattern> patterns;
    private final long[] lengths;
    private final Piece.Kind[] kinds;

    /**
     * @param most how many patterns to gather
     * @param patterns where they go
     */
    FillTrace(FillTable table, RunShape shape, Masonry masonry, int most, List<Pattern> patterns) {
        this.table = table;
        this.shape = shape;
        this.masonry = masonry;
        this.most = most;
        this.patterns = patterns;
        gauge = table.gauge();
        lengths = new long[gauge.pieces()];
        kinds = new Piece.Kind[gauge.pieces()];
    }

    /** Fillings with that score. */
    void gather(FillTable.Score score) {
        back(gauge.pieces(), gauge.shortfall(), score.violations(), score.cuts());
    }

    private boolean isDone() {
        return patterns.size() >= most;
    }

    private void back(int pieces, long shortfall, int met, int made) {
        if (pieces == 0) {
            patterns.add(new Pattern(shape, masonry, lengths.clone(), kinds.clone(), gauge.jointTotal()));
            return;
        }
        int metBefore = met - table.hits(pieces, shortfall);
        level(pieces, shortfall, metBefore, made, masonry.whole(), Piece.Kind.WHOLE);
        for (int kind = 0; kind < masonry.specials().size() && !isDone(); kind++) {
            level(pieces, shortfall, metBefore, made, masonry.specials().get(kind), Piece.Kind.SPECIAL);
        }
        for (long length = masonry.cutMost(); length >= masonry.cutLeast() && !isDone(); length -= masonry.cutStep()) {
            long before = shortfall - masonry.whole() + length;
            if (table.isReached(pieces - 1, metBefore, made - 1, before)
                    && table.allows(pieces - 1, before, length)) {
                place(pieces, length, Piece.Kind.CUT);
                back(pieces - 1, before, metBefore, made - 1);
            }
        }
    }

    private void level(int pieces, long shortfall, int met, int made, long length, Piece.Kind kind) {
        long before = shortfall - masonry.whole() + length;
        if (before < 0) {
            return;
        }
        boolean raked = table.isRaked(pieces - 1, before, length);
        int madeBefore = raked ? made - 1 : made;
        if (table.isReached(pieces - 1, met, madeBefore, before) && table.allows(pieces - 1, before, length)) {
            place(pieces, length, raked ? Piece.Kind.CUT : kind);
            back(pieces - 1, before, met, madeBefore);
        }
    }

    private void place(int pieces, long length, Piece.Kind kind) {
        lengths[pieces - 1] = length;
        kinds[pieces - 1] = kind;
    }
}
