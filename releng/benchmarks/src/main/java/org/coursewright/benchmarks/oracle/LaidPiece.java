package org.coursewright.benchmarks.oracle;

import java.util.ArrayList;
import java.util.List;

import org.coursewright.bond.Piece;
import org.coursewright.bond.Run;
import org.coursewright.bond.RunEnd;

/**
 * A piece at its exact place along the wall: from {@code start/parts} to {@code end/parts} (1/320 mm).
 */
record LaidPiece(long start, long end, long parts) {

    /** @return the pieces of {@code run}, its joints recomputed from its pieces */
    static List<LaidPiece> of(Run run) {
        long parts = Math.max(1, jointCount(run));
        long gauge = run.length().units() - run.pieces().stream().mapToLong(piece -> piece.length().units()).sum();
        long at = run.from().units() * parts + (run.startsWith() == RunEnd.JOINT ? gauge : 0);
        List<LaidPiece> laid = new ArrayList<>();
        for (Piece piece : run.pieces()) {
            long end = at + piece.length().units() * parts;
            laid.add(new LaidPiece(at, end, parts));
            at = end + gauge;
        }
        return laid;
    }

    private static int jointCount(Run run) {
        return run.pieces().size() - 1 + (run.startsWith() == RunEnd.JOINT ? 1 : 0)
                + (run.endsWith() == RunEnd.JOINT ? 1 : 0);
    }

    /** @return whether a rake crosses the piece or passes below it */
    boolean isCrossed(Stretch stretch) {
        return stretch.clearFrom() != Long.MIN_VALUE && start < stretch.clearFrom() * parts
                || stretch.clearTo() != Long.MAX_VALUE && end > stretch.clearTo() * parts;
    }
}
