package org.coursewright.layout.ui.face;

import java.util.ArrayList;
import java.util.List;

import org.coursewright.bond.Piece;
import org.coursewright.bond.Run;
import org.coursewright.bond.RunEnd;
import org.coursewright.measure.Length;

/** Finds where the pieces of a run lie. */
final class PlacedRun {

    private final int course;
    private final Run run;
    private final int joints;
    /** All joints of the run together. */
    private final long jointTotal;

    PlacedRun(int course, Run run) {
        this.course = course;
        this.run = run;
        this.joints = run.jointCount();
        this.jointTotal = run.length().units() - run.pieces().stream().mapToLong(each -> each.length().units()).sum();
    }

    List<PlacedPiece> pieces() {
        List<PlacedPiece> placed = new ArrayList<>();
        int before = startsWithJoint() ? 1 : 0;
        Length laid = run.from();
        for (Piece piece : run.pieces()) {
            Length from = laid.plus(width(before));
            placed.add(new PlacedPiece(course, from, from.plus(piece.length()), piece, run));
            laid = laid.plus(piece.length());
            before++;
        }
        return placed;
    }

    private boolean startsWithJoint() {
        return run.startsWith() == RunEnd.JOINT;
    }

    private Length width(int count) {
        return joints == 0 ? Length.ZERO : Length.ofUnits(Math.round((double) jointTotal * count / joints));
    }
}
