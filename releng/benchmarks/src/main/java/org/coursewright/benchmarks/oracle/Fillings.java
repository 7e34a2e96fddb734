package org.coursewright.benchmarks.oracle;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

import org.coursewright.bond.CourseLayout;
import org.coursewright.bond.Piece;
import org.coursewright.bond.Run;
import org.coursewright.bond.WallFace;

/** Every filling of a run, one after the other, until there are too many. */
final class Fillings {

    private final WallFace wall;
    private final Stretch stretch;
    private final int limit;
    private final Deque<Long> pieces = new ArrayDeque<>();
    private final List<LaidCourse> found = new ArrayList<>();

    private Fillings(WallFace wall, Stretch stretch, int limit) {
        this.wall = wall;
        this.stretch = stretch;
        this.limit = limit;
    }

    /** @return all fillings, or more than {@code limit} if there are more than that */
    static List<LaidCourse> of(WallFace wall, Stretch stretch, int limit) {
        Fillings fillings = new Fillings(wall, stretch, limit);
        fillings.extend(stretch.length());
        return fillings.found;
    }

    private void extend(long rest) {
        if (!pieces.isEmpty() && isFilled(rest)) {
            found.add(laid());
        }
        for (long length : PieceLengths.of(wall.stock()).all()) {
            if (length <= rest && found.size() <= limit) {
                pieces.addLast(length);
                extend(rest - length);
                pieces.removeLast();
            }
        }
    }

    private boolean isFilled(long rest) {
        int joints = stretch.joints(pieces.size());
        return rest >= joints * wall.rule().least().units() && rest <= joints * wall.rule().most().units();
    }

    private LaidCourse laid() {
        Run run = new LaidStretch(stretch, List.copyOf(pieces)).run(wall);
        int cuts = (int) run.pieces().stream().filter(piece -> piece.kind() == Piece.Kind.CUT).count();
        CourseLayout course = new CourseLayout(wall.courses().get(stretch.course()), List.of(run));
        return new LaidCourse(LaidWall.joints(course), cuts);
    }
}
