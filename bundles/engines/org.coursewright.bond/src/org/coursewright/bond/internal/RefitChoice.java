package org.coursewright.bond.internal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

import org.coursewright.measure.Progress;

/**
 * Chooses for the open runs of a wall what laps best with the runs that keep their pieces and with one another, then what
 * needs the fewest cuts.
 */
final class RefitChoice {

    private record Change(Pattern before, RunShape shape) {
    }

    /** A run to be filled: variable {@code index}, with the ways that runs filled and changed alike have in common. */
    private record Open(RunSpan run, int index, Ways ways) {
    }

    /** Equal only to itself, so that it is quickly told apart from others. */
    private static final class Ways {
        private final List<Pattern> patterns;

        Ways(List<Pattern> patterns) {
            this.patterns = patterns;
        }
    }

    private record Neighbours(Ways below, Ways above, long offset) {
    }

    /** What is done where two runs of consecutive courses are near enough for their joints to lap too little. */
    interface Contact {
        void meet(RunSpan below, RunSpan above);
    }

    private final Masonry masonry;
    /** By the run itself, not by what it is equal to: runs are looked up many times, and each is there once. */
    private final Map<RunSpan, Pattern> filled = new IdentityHashMap<>();
    private final List<Open> open = new ArrayList<>();
    private final Map<RunSpan, Open> openBySpan = new IdentityHashMap<>();
    private final Map<Change, Ways> known = new HashMap<>();
    private final Map<Neighbours, long[]> tables = new HashMap<>();

    RefitChoice(Masonry masonry) {
        this.masonry = masonry;
    }

    void keep(RunSpan run, Pattern pattern) {
        filled.put(run, pattern);
    }

    /**
     * @param before how the run was filled when it was longer or shorter
     * @return whether a way to fill it is found
     */
    boolean open(RunSpan run, Pattern before) {
        Ways ways = known.computeIfAbsent(new Change(before, run.shape()),
                change -> new Ways(new RunRefit(change.before(), change.shape(), masonry).patterns()));
        Open added = new Open(run, open.size(), ways);
        open.add(added);
        openBySpan.put(run, added);
        return !ways.patterns.isEmpty();
    }

    /**
     * @param courses all runs of the wall
     * @return the pattern of every run that was kept or open
     */
    Map<RunSpan, Pattern> choose(List<List<RunSpan>> courses, Progress progress) {
        long[][] own = open.stream().map(each -> each.ways().patterns.stream().mapToLong(Pattern::cost).toArray())
                .toArray(long[][]::new);
        eachContact(courses, masonry.lap(), (below, above) -> addKept(own, below, above));
        CostNetwork network = new CostNetwork(own);
        eachContact(courses, masonry.lap(), (below, above) -> addPair(network, below, above));
        int[] chosen = network.solve(progress);
        open.forEach(each -> filled.put(each.run(), each.ways().patterns.get(chosen[each.index()])));
        return filled;
    }

    private void addKept(long[][] own, RunSpan below, RunSpan above) {
        long offset = above.from() - below.from();
        if (openBySpan.containsKey(below) && filled.containsKey(above)) {
            add(own, openBySpan.get(below), filled.get(above), offset);
        } else if (openBySpan.containsKey(above) && filled.containsKey(below)) {
            add(own, openBySpan.get(above), filled.get(below), -offset);
        }
    }

    private void add(long[][] own, Open run, Pattern neighbour, long offset) {
        long[] costs = own[run.index()];
        for (int way = 0; way < costs.length; way++) {
            costs[way] += laps(run.ways().patterns.get(way), neighbour, offset);
        }
    }

    private void addPair(CostNetwork network, RunSpan below, RunSpan above) {
        Open lower = openBySpan.get(below);
        Open upper = openBySpan.get(above);
        if (lower != null && upper != null) {
            network.add(lower.index(), upper.index(), tables.computeIfAbsent(
                    new Neighbours(lower.ways(), upper.ways(), above.from() - below.from()), this::table));
        }
    }

    private long[] table(Neighbours pair) {
        long[] costs = new long[pair.below().patterns.size() * pair.above().patterns.size()];
        int index = 0;
        for (Pattern lower : pair.below().patterns) {
            for (Pattern upper : pair.above().patterns) {
                costs[index++] = laps(lower, upper, pair.offset());
            }
        }
        return costs;
    }

    private long laps(Pattern first, Pattern second, long offset) {
        return CostNetwork.cost(LapCheck.violations(first, second, offset, masonry.lap()), 0, 0);
    }

    static void eachContact(List<List<RunSpan>> courses, long lap, Contact contact) {
        for (int course = 1; course < courses.size(); course++) {
            for (RunSpan below : courses.get(course - 1)) {
                for (RunSpan above : courses.get(course)) {
                    if (below.from() < above.to() + lap && above.from() < below.to() + lap) {
                        contact.meet(below, above);
                    }
                }
            }
        }
    }
}
