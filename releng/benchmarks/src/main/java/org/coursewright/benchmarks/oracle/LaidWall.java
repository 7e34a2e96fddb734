package org.coursewright.benchmarks.oracle;

import java.util.ArrayList;
import java.util.List;

import org.coursewright.bond.CourseLayout;
import org.coursewright.bond.Piece;
import org.coursewright.bond.Run;
import org.coursewright.bond.RunEnd;
import org.coursewright.bond.WallLayout;

/**
 * The head joints and cuts of a laid wall, recomputed from its pieces.
 *
 * @param joints by course
 * @param cuts pieces called cut
 * @param unfillable runs left empty
 */
record LaidWall(List<List<HeadJoint>> joints, int cuts, int unfillable) {

    /** @return what {@code layout} comes to */
    static LaidWall of(WallLayout layout) {
        List<List<HeadJoint>> joints = layout.courses().stream().map(LaidWall::joints).toList();
        long cuts = layout.courses().stream().flatMap(course -> course.runs().stream())
                .flatMap(run -> run.pieces().stream()).filter(piece -> piece.kind() == Piece.Kind.CUT).count();
        return new LaidWall(joints, (int) cuts, layout.unfillable().size());
    }

    static List<HeadJoint> joints(CourseLayout course) {
        List<HeadJoint> joints = new ArrayList<>();
        for (Run run : course.runs()) {
            List<LaidPiece> laid = LaidPiece.of(run);
            LaidPiece first = laid.get(0);
            LaidPiece last = laid.get(laid.size() - 1);
            if (run.startsWith() == RunEnd.JOINT) {
                joints.add(new HeadJoint(run.from().units() * first.parts(), first.start(), first.parts()));
            }
            for (int index = 1; index < laid.size(); index++) {
                joints.add(new HeadJoint(laid.get(index - 1).end(), laid.get(index).start(), first.parts()));
            }
            if (run.endsWith() == RunEnd.JOINT) {
                joints.add(new HeadJoint(last.end(), run.to().units() * last.parts(), last.parts()));
            }
        }
        return joints;
    }

    /** @return pairs of joints in consecutive courses that lap less than {@code leastLap} (1/320 mm), straight ones too */
    int shortLaps(long leastLap) {
        int tooShort = 0;
        for (int course = 1; course < joints.size(); course++) {
            for (HeadJoint upper : joints.get(course)) {
                tooShort += (int) joints.get(course - 1).stream().filter(lower -> upper.lapsShort(lower, leastLap))
                        .count();
            }
        }
        return tooShort;
    }
}
