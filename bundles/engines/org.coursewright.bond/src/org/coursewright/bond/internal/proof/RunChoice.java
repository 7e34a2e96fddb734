package org.coursewright.bond.internal.proof;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.coursewright.bond.internal.run.Pattern;
import org.coursewright.bond.internal.run.PieceSet;
import org.coursewright.bond.internal.stack.PatternPool;

/**
 * What a proof tells apart in a run: one pattern, all orders of some sets of pieces with joints nearly alike, or all
 * patterns with so many cuts beyond the least.
 *
 * @param pattern the pattern, if it is one alone
 * @param sets the sets of pieces, or none for all with {@code extra} cuts beyond the least
 * @param extra cuts beyond the least; {@link #MOST_EXTRA} stands for so many or more
 */
public record RunChoice(Optional<Pattern> pattern, List<PieceSet> sets, int extra) {

    /** So many extra cuts are taken to suit every neighbour. */
    static final int MOST_EXTRA = 4;

    private static final int MOST_PATTERNS = 24;
    private static final int MOST_SETS = 400;
    private static final int MOST_SETS_APART = 4000;
    private static final int MOST_SETS_LAST = 20_000;
    private static final int GROUP = 8;
    private static final int MOST_GROUPS = 12;
    private static final int MOST_ORDERS = 60;
    private static final int MOST_ORDERS_LAST = 300;

    /** All choices of runs of one shape; patterns are told apart where those without extra cuts are few. */
    static List<RunChoice> of(PatternPool pool) {
        List<RunChoice> choices = new ArrayList<>();
        Optional<List<Pattern>> few = pool.all(pool.leastCuts(), MOST_PATTERNS);
        few.orElse(List.of())
                .forEach(pattern -> choices.add(new RunChoice(Optional.of(pattern), List.of(), 0)));
        for (int extra = few.isPresent() ? 1 : 0; extra <= MOST_EXTRA; extra++) {
            Optional<List<PieceSet>> sets = extra < MOST_EXTRA
                    ? pool.allSets(pool.leastCuts() + extra, MOST_SETS)
                    : Optional.empty();
            for (List<PieceSet> group : groups(sets.orElse(List.of()))) {
                choices.add(new RunChoice(Optional.empty(), group, extra));
            }
        }
        return choices;
    }

    /** One group of no sets for those that are not told apart. */
    private static List<List<PieceSet>> groups(List<PieceSet> sets) {
        List<PieceSet> sorted = new ArrayList<>(sets);
        sorted.sort(Comparator.comparingInt(PieceSet::pieces).thenComparingLong(PieceSet::jointTotal));
        int size = Math.max(GROUP, (sets.size() + MOST_GROUPS - 1) / MOST_GROUPS);
        List<List<PieceSet>> groups = new ArrayList<>();
        for (int from = 0; from < Math.max(1, sorted.size()); from += size) {
            groups.add(List.copyOf(sorted.subList(from, Math.min(sorted.size(), from + size))));
        }
        return groups;
    }

    /**
     * Choices that together are this one: the halves of a group, or all orders of a set of pieces.
     *
     * @param last whether it is told apart though it comes to very many
     * @return empty if it is not told apart any further
     */
    List<RunChoice> split(PatternPool pool, boolean last) {
        if (sets.size() > 1) {
            int half = sets.size() / 2;
            return List.of(new RunChoice(Optional.empty(), sets.subList(0, half), extra),
                    new RunChoice(Optional.empty(), sets.subList(half, sets.size()), extra));
        }
        if (sets.isEmpty()) {
            return extra == MOST_EXTRA || pattern.isPresent()
                    ? List.of()
                    : pool.allSets(pool.leastCuts() + extra, last ? MOST_SETS_LAST : MOST_SETS_APART)
                            .map(RunChoice::groups).orElse(List.of())
                            .stream().map(group -> new RunChoice(Optional.empty(), group, extra)).toList();
        }
        return pool.orders(sets).all(last ? MOST_ORDERS_LAST : MOST_ORDERS).stream()
                .map(order -> new RunChoice(Optional.of(order), List.of(), extra)).toList();
    }

    /** Whether it says more than how many cuts there are. */
    boolean isGroup() {
        return !sets.isEmpty();
    }
}
