package org.coursewright.benchmarks.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.coursewright.bond.Piece;
import org.coursewright.bond.Run;
import org.coursewright.bond.WallFace;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthRatio;

/** Recomputes one run of a layout. */
final class RunVerifier {

    private final WallFace wall;
    private final Stretch stretch;
    private final Run run;
    private final List<String> faults = new ArrayList<>();

    RunVerifier(WallFace wall, Stretch stretch, Run run) {
        this.wall = wall;
        this.stretch = stretch;
        this.run = run;
    }

    List<String> faults() {
        if (run.startsWith() != stretch.start() || run.endsWith() != stretch.end()) {
            fault("begins or ends otherwise");
        }
        if (run.pieces().isEmpty()) {
            fault("has no pieces");
            return faults;
        }
        long sum = run.pieces().stream().mapToLong(piece -> piece.length().units()).sum();
        verifyJoint(stretch.joints(run.pieces().size()), stretch.length() - sum);
        verifyPieces();
        return faults;
    }

    private void verifyJoint(int joints, long total) {
        if (run.jointCount() != joints) {
            fault("has %d joints, not the %d stated".formatted(joints, run.jointCount()));
        } else if (joints == 0 && (total != 0 || run.joint().isPresent())) {
            fault("without a joint is not filled exactly");
        } else if (joints > 0) {
            verifyGauge(joints, total);
        }
    }

    private void verifyGauge(int joints, long total) {
        Optional<LengthRatio> stated = run.joint();
        if (stated.isEmpty() || stated.get().compareTo(new LengthRatio(Length.ofUnits(total), joints)) != 0) {
            fault("leaves %d/%d units for each joint, stated is %s".formatted(total, joints, stated));
        }
        if (total < joints * wall.rule().least().units() || total > joints * wall.rule().most().units()) {
            fault("has joints of %d/%d units, out of range".formatted(total, joints));
        }
    }

    private void verifyPieces() {
        PieceLengths lengths = PieceLengths.of(wall.stock());
        List<LaidPiece> laid = LaidPiece.of(run);
        for (int index = 0; index < laid.size(); index++) {
            Piece piece = run.pieces().get(index);
            long length = piece.length().units();
            if (!lengths.all().contains(length)) {
                fault("has a piece of %s that cannot be had".formatted(piece.length()));
            } else if (piece.kind() != lengths.kind(length, laid.get(index).isCrossed(stretch))) {
                fault("calls piece %d of %s %s".formatted(index, piece.length(), piece.kind()));
            }
        }
    }

    private void fault(String what) {
        faults.add("%s: the run %s %s.".formatted(wall.mark(), stretch, what));
    }
}
