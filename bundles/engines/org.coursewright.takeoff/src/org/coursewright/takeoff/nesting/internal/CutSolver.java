package org.coursewright.takeoff.nesting.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

import org.coursewright.measure.Length;
import org.coursewright.measure.Progress;
import org.coursewright.takeoff.Fraction;
import org.coursewright.takeoff.nesting.CutPattern;
import org.coursewright.takeoff.nesting.CutPlan;
import org.coursewright.takeoff.nesting.CutStock;

/**
 * Solves one cutting problem: relaxation, plans by filling and rounding, search over what rounding leaves, diving and, if the
 * bound is still not met, search over everything.
 */
public final class CutSolver {

    /** What a relaxation takes, in nodes of search. */
    private static final int NODES_FOR_RELAXATION = 500;

    private final CutStock stock;
    private final Sizes sizes;
    private final long[] demand;
    private final int limit;
    private final Progress progress;

    /** @param limit nodes of search, zero or more */
    public CutSolver(CutStock stock, SortedMap<Length, Long> pieces, int limit, Progress progress) {
        this.stock = stock;
        TreeMap<Length, Long> wanted = new TreeMap<>(pieces);
        wanted.values().removeIf(count -> count == 0);
        sizes = new Sizes(stock, wanted.descendingKeySet());
        demand = sizes.demand(wanted);
        this.limit = limit;
        this.progress = progress;
    }

    /** @return the best plan found within the limit */
    public CutPlan solve() {
        if (demand.length == 0) {
            return new CutPlan(stock, List.of(), 0, Fraction.ZERO, 0, true);
        }
        Relaxation relaxation = new ColumnGeneration(sizes, demand).solve(progress);
        Fraction bound = relaxation.bound(demand);
        Cutting best = rounded(relaxation, bound.ceiling());
        if (best.total() > bound.ceiling()) {
            best = new Diving(sizes, bound.ceiling(), limit / NODES_FOR_RELAXATION, progress).dive(demand).orElse(best);
        }
        boolean proven = best.total() == bound.ceiling();
        if (!proven) {
            BranchAndBound search = new BranchAndBound(sizes, relaxation, limit, progress);
            best = search.better(demand, best.total(), bound.ceiling()).orElse(best);
            proven = best.total() == bound.ceiling() || !search.gaveUp();
        }
        return new CutPlan(stock, patterns(best), best.total(), bound, proven ? best.total() : bound.ceiling(),
                proven);
    }

    private Cutting rounded(Relaxation relaxation, long target) {
        Filling filling = new Filling(sizes);
        Cutting filled = filling.fill(demand);
        long[] left = demand.clone();
        Cutting floor = filling.roundedDown(relaxation, left);
        Cutting rest = filling.fill(left);
        if (Math.min(filled.total(), floor.total() + rest.total()) > target) {
            Optional<Cutting> better = new BranchAndBound(sizes, relaxation, limit / 4, progress).better(left, rest
                    .total(), target - floor.total());
            rest = better.orElse(rest);
        }
        Cutting combined = floor.plus(rest);
        return filled.total() <= combined.total() ? filled : combined;
    }

    private List<CutPattern> patterns(Cutting cutting) {
        List<CutPattern> patterns = new ArrayList<>();
        cutting.forEach((pieces, units) -> patterns.add(new CutPattern(lengths(pieces), units)));
        patterns.sort(Comparator.comparingLong(CutPattern::units).reversed().thenComparing(
                pattern -> List.copyOf(pattern.pieces().entrySet()), CutSolver::compare));
        return patterns;
    }

    /** Any order will do that is the same every time. */
    private static int compare(List<Map.Entry<Length, Integer>> first, List<Map.Entry<Length, Integer>> second) {
        for (int i = 0; i < Math.min(first.size(), second.size()); i++) {
            int order = Map.Entry.<Length, Integer>comparingByKey().thenComparing(Map.Entry.comparingByValue()).compare(
                    first.get(i), second.get(i));
            if (order != 0) {
                return order;
            }
        }
        return Integer.compare(first.size(), second.size());
    }

    private SortedMap<Length, Integer> lengths(int[] pieces) {
        SortedMap<Length, Integer> lengths = new TreeMap<>();
        for (int item = 0; item < pieces.length; item++) {
            if (pieces[item] > 0) {
                lengths.put(sizes.length(item), pieces[item]);
            }
        }
        return lengths;
    }
}
