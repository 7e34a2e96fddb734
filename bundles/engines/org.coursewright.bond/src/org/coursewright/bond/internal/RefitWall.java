package org.coursewright.bond.internal;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

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

    /** Ways to fill runs of one shape; the same object for runs that were filled alike and have become alike. */
    private static final class Ways {
        private final List<Pattern> patterns;

        Ways(List<Pattern> patterns) {
            this.patterns = patterns;
        }
    }

    private record Neighbours(Ways below, Ways above, long offset) {
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
        Map<RunSpan, Pattern> kept = new HashMap<>();
        Map<RunSpan, Ways> open = new LinkedHashMap<>();
        Map<Change, Ways> known = new HashMap<>();
        for (int course = 0; course < now.size(); course++) {
            List<RunSpan> before = courses.get(course);
            List<RunSpan> after = now.get(course);
            if (before.size() != after.size()) {
                return Optional.empty();
            }
            for (int run = 0; run < after.size(); run++) {
                if (before.get(run).shape().equals(after.get(run).shape())) {
                    Optional.ofNullable(patterns.get(before.get(run))).ifPresent(keep(kept, after.get(run)));
                } else if (isFittable(before.get(run), after.get(run))) {
                    open.put(after.get(run), known.computeIfAbsent(
                            new Change(patterns.get(before.get(run)), after.get(run).shape()), this::ways));
                } else {
                    return Optional.empty();
                }
            }
        }
        if (known.values().stream().anyMatch(ways -> ways.patterns.isEmpty())) {
            return Optional.empty();
        }
        choose(now, kept, open, progress);
        return Optional.of(new RefitWall(masonry, handing, now, kept));
    }

    private static Consumer<Pattern> keep(Map<RunSpan, Pattern> kept, RunSpan run) {
        return pattern -> kept.put(run, pattern);
    }

    /** Whether the run was filled and is still level and of the same ends. */
    private boolean isFittable(RunSpan before, RunSpan after) {
        return patterns.containsKey(before) && before.start() == after.start() && before.end() == after.end()
                && !after.shape().isRaked();
    }

    private Ways ways(Change change) {
        return new Ways(new RunRefit(change.before(), change.shape(), masonry).patterns());
    }

    /** Chooses for the open runs what laps best with the kept ones and with one another, then the fewest cuts. */
    private void choose(List<List<RunSpan>> now, Map<RunSpan, Pattern> kept, Map<RunSpan, Ways> open,
            Progress progress) {
        List<RunSpan> runs = List.copyOf(open.keySet());
        Map<RunSpan, Integer> indices = new HashMap<>();
        long[][] own = new long[runs.size()][];
        for (int run = 0; run < own.length; run++) {
            indices.put(runs.get(run), run);
            own[run] = open.get(runs.get(run)).patterns.stream().mapToLong(Pattern::cost).toArray();
        }
        CostNetwork network = new CostNetwork(own);
        Map<Neighbours, long[]> tables = new HashMap<>();
        eachContact(now, (below, above) -> {
            Integer lower = indices.get(below);
            Integer upper = indices.get(above);
            long offset = above.from() - below.from();
            if (lower != null && upper != null) {
                network.add(lower, upper, tables.computeIfAbsent(
                        new Neighbours(open.get(below), open.get(above), offset), this::table));
            } else if (lower != null && kept.containsKey(above)) {
                beside(own[lower], open.get(below), kept.get(above), offset);
            } else if (upper != null && kept.containsKey(below)) {
                beside(own[upper], open.get(above), kept.get(below), -offset);
            }
        });
        int[] chosen = network.solve(progress);
        for (int run = 0; run < chosen.length; run++) {
            kept.put(runs.get(run), open.get(runs.get(run)).patterns.get(chosen[run]));
        }
    }

    private long[] table(Neighbours pair) {
        long[] costs = new long[pair.below().patterns.size() * pair.above().patterns.size()];
        int index = 0;
        for (Pattern lower : pair.below().patterns) {
            for (Pattern upper : pair.above().patterns) {
                costs[index++] = CostNetwork.cost(LapCheck.violations(lower, upper, pair.offset(), masonry.lap()), 0,
                        0);
            }
        }
        return costs;
    }

    private void beside(long[] own, Ways ways, Pattern neighbour, long offset) {
        for (int way = 0; way < own.length; way++) {
            own[way] += CostNetwork.cost(
                    LapCheck.violations(ways.patterns.get(way), neighbour, offset, masonry.lap()), 0, 0);
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
