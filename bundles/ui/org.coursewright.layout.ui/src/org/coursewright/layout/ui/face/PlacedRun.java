package org.coursewright.layout.ui.face;

import java.util.ArrayList;
import java.util.List;

import org.coursewright.bond.Piece;
import org.coursewright.bond.Run;
import org.coursewright.bond.RunEnd;
import org.coursewright.measure.Length;

/** Finds where the pieces of a run, and the joints between and beside them, lie. */
record PlacedRun(int course, Run run) {

    List<PlacedPiece> pieces() {
        List<PlacedPiece> placed = new ArrayList<>();
        int joints = startsWithJoint() ? 1 : 0;
        Length laid = run.from();
        for (Piece piece : run.pieces()) {
            Length from = laid.plus(width(joints));
            placed.add(new PlacedPiece(course, from, from.plus(piece.length()), piece, run));
            laid = laid.plus(piece.length());
            joints++;
        }
        return placed;
    }

    /** The joints, exactly: in units times the number of joints. */
    List<PlacedJoint> joints() {
        List<PlacedJoint> placed = new ArrayList<>();
        int count = run.jointCount();
        Length laid = run.from();
        if (startsWithJoint()) {
            placed.add(joint(laid, 0, run.startsWith()));
        }
        for (int i = 0; placed.size() < count; i++) {
            laid = laid.plus(run.pieces().get(i).length());
            boolean last = i == run.pieces().size() - 1;
            placed.add(joint(laid, placed.size(), last ? run.endsWith() : RunEnd.FACE));
        }
        return placed;
    }

    private PlacedJoint joint(Length laid, int before, RunEnd against) {
        long total = total().units();
        long start = laid.units() * run.jointCount() + before * total;
        return new PlacedJoint(start, start + total, run.jointCount(), against == RunEnd.JOINT);
    }

    private boolean startsWithJoint() {
        return run.startsWith() == RunEnd.JOINT;
    }

    private Length width(int joints) {
        return run.jointCount() == 0
                ? Length.ZERO
                : Length.ofUnits(Math.round((double) total().units() * joints / run.jointCount()));
    }

    /** All joints of the run together. */
    private Length total() {
        return run.pieces().stream().map(Piece::length).reduce(run.length(), Length::minus);
    }
}
