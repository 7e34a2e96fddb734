package org.coursewright.bond.internal;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.coursewright.bond.Piece;
import org.coursewright.bond.Run;
import org.coursewright.bond.WallFace;
import org.coursewright.bond.WallLayout;
import org.coursewright.measure.Progress;

/**
 * A wall as it is laid, to be fitted to a small change of one dimension: runs that stay as they are keep their pieces, those
 * that become longer or shorter are filled {@linkplain RunRefit much as before}. What comes of it is a layout that exists,
 * found in a fraction of the time that laying the wall takes; laying it may find a better one.
 */
public final class RefitWall {

    private final Masonry masonry;
    private final Handing handing;
    private final List<List<RunSpan>> courses;
    private final Map<RunSpan, Pattern> patterns;
    private final LayingCost cost;

    private RefitWall(Masonry masonry, Handing handing, List<List<RunSpan>> courses, Map<RunSpan, Pattern> patterns) {
        this.masonry = masonry;
        this.handing = handing;
        this.courses = courses;
        this.patterns = patterns;
        cost = cost(courses, patterns);
    }

    static RefitWall of(WallFace wall, WallLayout layout, Handing handing) {
        Masonry masonry = Masonry.of(wall.stock(), wall.rule());
        List<List<RunSpan>> courses = new RunFinder(wall, handing).find();
        Map<RunSpan, Pattern> patterns = new IdentityHashMap<>();
        for (int course = 0; course < courses.size(); course++) {
            Map<Long, Run> laid = new HashMap<>();
            layout.courses().get(course).runs().forEach(run -> laid.put(run.from().units(), run));
            for (RunSpan span : courses.get(course)) {
                Optional.ofNullable(laid.get(span.from()))
                        .ifPresent(run -> patterns.put(span, pattern(run, span.shape(), masonry)));
            }
        }
        return new RefitWall(masonry, handing, courses, patterns);
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

    /** @return what the wall comes to so */
    public LayingCost cost() {
        return cost;
    }

    /**
     * Fits the layout to the wall with a dimension changed.
     *
     * @return the wall so laid, or empty if its runs are not those of this one or nothing near fills one of them
     */
    public Optional<RefitWall> fit(WallFace changed, Progress progress) {
        List<List<RunSpan>> now = new RunFinder(changed, handing).find();
        RefitChoice choice = new RefitChoice(masonry);
        for (int course = 0; course < now.size(); course++) {
            if (!fit(courses.get(course), now.get(course), choice)) {
                return Optional.empty();
            }
        }
        return Optional.of(new RefitWall(masonry, handing, now, choice.choose(now, progress)));
    }

    /** @return whether every run of the course can be fitted */
    private boolean fit(List<RunSpan> before, List<RunSpan> after, RefitChoice choice) {
        if (before.size() != after.size()) {
            return false;
        }
        for (int run = 0; run < after.size(); run++) {
            Optional<Pattern> pattern = Optional.ofNullable(patterns.get(before.get(run)));
            RunSpan span = after.get(run);
            if (before.get(run).shape().equals(span.shape())) {
                pattern.ifPresent(kept -> choice.keep(span, kept));
            } else if (pattern.isEmpty() || !isAlike(before.get(run), span) || !choice.open(span, pattern.get())) {
                return false;
            }
        }
        return true;
    }

    private static boolean isAlike(RunSpan before, RunSpan after) {
        return before.start() == after.start() && before.end() == after.end() && !after.shape().isRaked();
    }

    private LayingCost cost(List<List<RunSpan>> spans, Map<RunSpan, Pattern> laid) {
        long[] violations = new long[1];
        RefitChoice.eachContact(spans, masonry.lap(), (below, above) -> {
            if (laid.containsKey(below) && laid.containsKey(above)) {
                violations[0] += LapCheck.violations(laid.get(below), laid.get(above), above.from() - below.from(),
                        masonry.lap()) - StraightJoints.between(below, above);
            }
        });
        long unfilled = spans.stream().mapToLong(List::size).sum() - laid.size();
        return new LayingCost(unfilled, violations[0], laid.values().stream().mapToLong(Pattern::cuts).sum());
    }
}
