package org.coursewright.benchmarks.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.coursewright.bond.CourseLayout;
import org.coursewright.bond.Piece;
import org.coursewright.bond.Run;
import org.coursewright.bond.UnfillableRun;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;
import org.coursewright.measure.Length;
import org.coursewright.measure.LengthRatio;

/**
 * A stretch and the lengths of the pieces that fill it, from start to end (1/320 mm).
 */
record LaidStretch(Stretch stretch, List<Long> pieces) {

    static Length length(long units) {
        return Length.ofUnits(units);
    }

    /** @return the layout of {@code wall} that these make up, nothing counted yet */
    static WallLayout layout(WallFace wall, List<LaidStretch> laid, List<UnfillableRun> unfillable) {
        List<CourseLayout> courses = new ArrayList<>();
        for (int index = 0; index < wall.courses().size(); index++) {
            int course = index;
            List<Run> runs = laid.stream().filter(run -> run.stretch.course() == course).map(run -> run.run(wall))
                    .toList();
            courses.add(new CourseLayout(wall.courses().get(index), runs));
        }
        return new WallLayout(wall.mark(), courses, 0, List.of(), 0, unfillable, false, 0);
    }

    Run run(WallFace wall) {
        int joints = stretch.joints(pieces.size());
        long rest = stretch.length() - pieces.stream().mapToLong(Long::longValue).sum();
        Optional<LengthRatio> joint = joints == 0
                ? Optional.empty()
                : Optional.of(new LengthRatio(length(rest), joints));
        Run plain = new Run(length(stretch.from()), length(stretch.to()), stretch.start(), stretch.end(), joint,
                joints, pieces.stream().map(piece -> new Piece(length(piece), Piece.Kind.WHOLE)).toList());
        return new Run(plain.from(), plain.to(), plain.startsWith(), plain.endsWith(), joint, joints,
                kinds(wall, plain));
    }

    private List<Piece> kinds(WallFace wall, Run plain) {
        PieceLengths lengths = PieceLengths.of(wall.stock());
        List<LaidPiece> places = LaidPiece.of(plain);
        List<Piece> kinds = new ArrayList<>();
        for (int index = 0; index < pieces.size(); index++) {
            kinds.add(new Piece(length(pieces.get(index)),
                    lengths.kind(pieces.get(index), places.get(index).isCrossed(stretch))));
        }
        return kinds;
    }
}
