package org.coursewright.bond.internal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.coursewright.bond.CourseLayout;
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

    private record Change(Pattern before, RunShape shape) {
    }

    private record Neighbours(List<Pattern> below, List<Pattern> above, long offset) {
    }

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
        Map<RunSpan, Pattern> patterns = new HashMap<>();
        for (int course = 0; course < courses.size(); course++) {
            Map<Long, Run> laid = new HashMap<>();
            runs(layout.courses().get(course)).forEach(run -> laid.put(run.from().units(), run));
            for (RunSpan span : courses.get(course)) {
                Optional.ofNullable(laid.get(span.from()))
                        .ifPresent(run -> patterns.put(span, pattern(run, span.shape(), masonry)));
            }
        }
        return new RefitWall(masonry, handing, courses, patterns);
    }

    private static List<Run> runs(CourseLayout course) {
        return course.runs();
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
        Map<RunSpan, Pattern> kept = new HashMap<>();
        List<RunSpan> open = new ArrayList<>();
        List<List<Pattern>> ways = new ArrayList<>();
        Map<Change, List<Pattern>> known = new HashMap<>();
        for (int course = 0; course < now.size(); course++) {
            List<RunSpan> before = courses.get(course);
            List<RunSpan> after = now.get(course);
            if (before.size() != after.size()) {
                return Optional.empty();
            }
            for (int run = 0; run < after.size(); run++) {
                Optional<List<Pattern>> found = ways(before.get(run), after.get(run), known);
                if (found.isEmpty()) {
                    return Optional.empty();
                }
                if (found.get().size() == 1) {
                    kept.put(after.get(run), found.get().get(0));
                } else if (!found.get().isEmpty()) {
                    open.add(after.get(run));
                    ways.add(found.get());
                }
            }
        }
        choose(now, kept, open, ways, progress);
        return Optional.of(new RefitWall(masonry, handing, now, kept));
    }

    /** None for a run that nothing filled and that stays as it is; empty if the run cannot be fitted. */
    private Optional<List<Pattern>> ways(RunSpan before, RunSpan after, Map<Change, List<Pattern>> known) {
        Pattern pattern = patterns.get(before);
        RunShape shape = after.shape();
        if (shape.equals(before.shape())) {
            return Optional.of(pattern == null ? List.of() : List.of(pattern));
        }
        boolean same = pattern != null && before.start() == after.start() && before.end() == after.end();
        if (!same || shape.isRaked()) {
            return Optional.empty();
        }
        List<Pattern> found = known.computeIfAbsent(new Change(pattern, shape),
                change -> new RunRefit(pattern, shape, masonry).patterns());
        return found.isEmpty() ? Optional.empty() : Optional.of(found);
    }

    /** Chooses for the open runs what laps best with the kept ones and with one another, then the fewest cuts. */
    private void choose(List<List<RunSpan>> now, Map<RunSpan, Pattern> kept, List<RunSpan> open,
            List<List<Pattern>> ways, Progress progress) {
        Map<RunSpan, Integer> indices = new HashMap<>();
        long[][] own = new long[open.size()][];
        for (int run = 0; run < own.length; run++) {
            indices.put(open.get(run), run);
            own[run] = ways.get(run).stream().mapToLong(Pattern::cost).toArray();
        }
        CostNetwork network = new CostNetwork(own);
        Map<Neighbours, long[]> tables = new HashMap<>();
        eachContact(now, (below, above) -> {
            Integer lower = indices.get(below);
            Integer upper = indices.get(above);
            long offset = above.from() - below.from();
            if (lower != null && upper != null) {
                network.add(lower, upper, tables.computeIfAbsent(
                        new Neighbours(ways.get(lower), ways.get(upper), offset), this::table));
            } else if (lower != null && kept.containsKey(above)) {
                beside(own[lower], ways.get(lower), kept.get(above), offset);
            } else if (upper != null && kept.containsKey(below)) {
                beside(own[upper], ways.get(upper), kept.get(below), -offset);
            }
        });
        int[] chosen = network.solve(progress);
        for (int run = 0; run < chosen.length; run++) {
            kept.put(open.get(run), ways.get(run).get(chosen[run]));
        }
    }

    private long[] table(Neighbours pair) {
        long[] costs = new long[pair.below().size() * pair.above().size()];
        int index = 0;
        for (Pattern lower : pair.below()) {
            for (Pattern upper : pair.above()) {
                costs[index++] = CostNetwork.cost(LapCheck.violations(lower, upper, pair.offset(), masonry.lap()), 0,
                        0);
            }
        }
        return costs;
    }

    private void beside(long[] own, List<Pattern> ways, Pattern neighbour, long offset) {
        for (int way = 0; way < own.length; way++) {
            own[way] += CostNetwork.cost(LapCheck.violations(ways.get(way), neighbour, offset, masonry.lap()), 0, 0);
        }
    }

    private LayingCost cost(List<List<RunSpan>> spans, Map<RunSpan, Pattern> laid) {
        long[] violations = new long[1];
        eachContact(spans, (below, above) -> {
            if (laid.containsKey(below) && laid.containsKey(above)) {
                violations[0] += LapCheck.violations(laid.get(below), laid.get(above), above.from() - below.from(),
                        masonry.lap()) - StraightJoints.between(below, above);
            }
        });
        long unfilled = spans.stream().mapToLong(List::size).sum() - laid.size();
        return new LayingCost(unfilled, violations[0], laid.values().stream().mapToLong(Pattern::cuts).sum());
    }

    private interface Contact {
        void meet(RunSpan below, RunSpan above);
    }

    private void eachContact(List<List<RunSpan>> spans, Contact contact) {
        for (int course = 1; course < spans.size(); course++) {
            for (RunSpan below : spans.get(course - 1)) {
                for (RunSpan above : spans.get(course)) {
                    if (below.from() < above.to() + masonry.lap() && above.from() < below.to() + masonry.lap()) {
                        contact.meet(below, above);
                    }
                }
            }
        }
    }
}
