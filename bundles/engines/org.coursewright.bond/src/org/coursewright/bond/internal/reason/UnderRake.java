package org.coursewright.bond.internal.reason;

import org.coursewright.bond.Piece;
import org.coursewright.bond.Run;
import org.coursewright.bond.RunEnd;
import org.coursewright.bond.internal.run.RunShape;

/** Counts the pieces of a laid run that lie wholly or partly under a rake, all of which are cut. */
final class UnderRake {

    private UnderRake() {
    }

    static int cuts(Run run, RunShape shape) {
        if (!shape.isRaked()) {
            return 0;
        }
        long parts = Math.max(1, run.jointCount());
        long joint = run.joint().map(width -> width.total().units()).orElse(0L);
        long at = run.startsWith() == RunEnd.JOINT ? joint : 0;
        int cuts = 0;
        for (Piece piece : run.pieces()) {
            long to = at + piece.length().units() * parts;
            boolean under = at < shape.rakeStart() * parts || to > (shape.length() - shape.rakeEnd()) * parts;
            cuts += under && piece.kind() == Piece.Kind.CUT ? 1 : 0;
            at = to + joint;
        }
        return cuts;
    }
}
