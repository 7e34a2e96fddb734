package org.coursewright.layout.ui.face;

import java.util.ArrayList;
import java.util.List;

import org.coursewright.bond.Piece;
import org.coursewright.bond.Run;
import org.coursewright.bond.RunEnd;
import org.coursewright.measure.Length;

/** Finds where the pieces of a run, and the joints between and beside them, lie. */
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

    /** The joints, exactly: in units times the number of joints. */
    List<PlacedJoint> joints() {
        List<PlacedJoint> placed = new ArrayList<>();
        Length laid = run.from();
        if (startsWithJoint()) {
            placed.add(joint(laid, 0, true));
        }
        for (int i = 0; placed.size() < joints; i++) {
            laid = laid.plus(run.pieces().get(i).length());
            boolean last = i == run.pieces().size() - 1;
            placed.add(joint(laid, placed.size(), last));
        }
        return placed;
    }

    private PlacedJoint joint(Length laid, int before, boolean atEnd) {
        long start = laid.units() * joints + before * jointTotal;
        return new PlacedJoint(start, start + jointTotal, joints, atEnd);
    }

    private boolean startsWithJoint() {
        return run.startsWith() == RunEnd.JOINT;
    }

    private Length width(int count) {
        return joints == 0 ? Length.ZERO : Length.ofUnits(Math.round((double) jointTotal * count / joints));
    }
}
