package org.coursewright.bond.internal.refit;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.coursewright.bond.Piece;
import org.coursewright.bond.Run;
import org.coursewright.bond.RunEnd;
import org.coursewright.bond.WallLayout;
import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.Pattern;
import org.coursewright.bond.internal.run.RunShape;
import org.coursewright.bond.internal.run.RunSpan;

/** How the runs of a wall are filled in a layout. */
final class LaidRuns {

    /** Where a run lies and how it ends. */
    private record Place(int course, long from, long to, RunEnd start, RunEnd end) {

        static Place of(RunSpan span) {
            return new Place(span.course(), span.from(), span.to(), span.start(), span.end());
        }
    }

    private final FaceRuns runs;
    private final WallLayout layout;

    LaidRuns(FaceRuns runs, WallLayout layout) {
        this.runs = runs;
        this.layout = layout;
    }

    /** Whether the layout has these runs and no others; not so if the wall has changed since. */
    boolean areAll() {
        Set<Place> laid = new HashSet<>();
        for (int course = 0; course < layout.courses().size(); course++) {
            int index = course;
            layout.courses().get(course).runs().forEach(run -> laid.add(new Place(index, run.from().units(),
                    run.to().units(), run.startsWith(), run.endsWith())));
        }
        Set<Place> now = new HashSet<>();
        for (int course = 0; course < runs.courses(); course++) {
            runs.course(course).forEach(run -> now.add(Place.of(run.span())));
        }
        return layout.courses().size() == runs.courses() && now.containsAll(laid)
                && now.size() == laid.size() + layout.unfillable().size();
    }

    /** By course and run the one way in which it is filled, the same object for runs that are alike; null if it is not. */
    RefitWays[][] filled() {
        Map<RunShape, Map<Pattern, RefitWays>> known = new HashMap<>();
        RefitWays[][] filled = new RefitWays[runs.courses()][];
        for (int course = 0; course < filled.length; course++) {
            Map<Long, Run> laid = new HashMap<>();
            layout.courses().get(course).runs().forEach(run -> laid.put(run.from().units(), run));
            filled[course] = new RefitWays[runs.course(course).size()];
            for (int index = 0; index < filled[course].length; index++) {
                ShapedRun run = runs.course(course).get(index);
                Run found = laid.get(run.span().from());
                if (found != null) {
                    filled[course][index] = known.computeIfAbsent(run.shape(), shape -> new HashMap<>())
                            .computeIfAbsent(pattern(found, run.shape(), runs.memory().masonry()),
                                    pattern -> new RefitWays(List.of(pattern)));
                }
            }
        }
        return filled;
    }

    private static Pattern pattern(Run run, RunShape shape, Masonry masonry) {
        long[] pieces = run.pieces().stream().mapToLong(piece -> piece.length().units()).toArray();
        Piece.Kind[] kinds = run.pieces().stream().map(Piece::kind).toArray(Piece.Kind[]::new);
        long total = shape.length();
        for (long piece : pieces) {
            total -= piece;
        }
        return new Pattern(shape, masonry, pieces, kinds, run.jointCount() == 0 ? 0 : total);
    }
}
