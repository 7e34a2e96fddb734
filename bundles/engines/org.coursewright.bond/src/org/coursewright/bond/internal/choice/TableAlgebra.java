package org.coursewright.bond.internal.choice;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;

/** Adds cost tables and minimises over a variable; remembers results of tables that it has combined before. */
public final class TableAlgebra {

    /** Arrays compare by identity, so equal keys mean the same arrays. */
    private record Key(long[] first, boolean firstTurned, long[] own, long[] second, boolean secondTurned) {
    }

    /** More costs than these are not remembered. */
    private static final long MOST_KEPT = 4_000_000;

    private final Map<Key, long[]> known = new HashMap<>();
    private long kept;
    private final WorkLimit limit;

    /** @param limit learns how many sums were looked at to eliminate variables between several others */
    public TableAlgebra(WorkLimit limit) {
        this.limit = limit;
    }

    private long[] known(Key key, Function<Key, long[]> work) {
        if (kept > MOST_KEPT) {
            known.clear();
            kept = 0;
        }
        return known.computeIfAbsent(key, unknown -> {
            long[] found = work.apply(unknown);
            kept += found.length;
            return found;
        });
    }

    long[] sum(long[] first, long[] second) {
        return known(new Key(first, false, first, second, true), key -> {
            long[] sum = new long[first.length];
            for (int index = 0; index < sum.length; index++) {
                sum[index] = first[index] + second[index];
            }
            return sum;
        });
    }

    /** For every choice of values of the other variables of {@code around}, the least cost over the variable's values. */
    CostTable eliminate(int variable, long[] own, List<CostTable> around) {
        if (around.stream().allMatch(table -> table.scope().length == 2)) {
            if (around.size() == 1) {
                return single(variable, own, around.get(0));
            } else if (around.size() == 2) {
                return pair(variable, own, around.get(0), around.get(1));
            }
        }
        return many(variable, own, around);
    }

    private CostTable single(int variable, long[] own, CostTable table) {
        int other = 1 - table.place(variable);
        boolean turned = other == 1;
        long[] costs = known(new Key(table.costs(), turned, own, own, false), key -> {
            long[] rows = turned ? turn(table) : table.costs();
            long[] least = new long[table.sizes()[other]];
            for (int row = 0; row < least.length; row++) {
                least[row] = least(rows, row * own.length, own, 0, own.length);
            }
            return least;
        });
        return new CostTable(new int[]{table.scope()[other]}, new int[]{table.sizes()[other]}, costs);
    }

    private static long least(long[] first, int from, long[] second, int secondFrom, int length) {
        long least = Long.MAX_VALUE;
        for (int index = 0; index < length; index++) {
            least = Math.min(least, first[from + index] + second[secondFrom + index]);
        }
        return least;
    }

    private CostTable pair(int variable, long[] own, CostTable one, CostTable two) {
        int oneOther = one.scope()[1 - one.place(variable)];
        int twoOther = two.scope()[1 - two.place(variable)];
        CostTable first = oneOther < twoOther ? one : two;
        CostTable second = oneOther < twoOther ? two : one;
        int firstPlace = 1 - first.place(variable);
        int secondPlace = 1 - second.place(variable);
        int rows = first.sizes()[firstPlace];
        int columns = second.sizes()[secondPlace];
        Key key = new Key(first.costs(), firstPlace == 1, own, second.costs(), secondPlace == 1);
        long[] costs = known(key, unknown -> {
            long[] left = plus(firstPlace == 1 ? turn(first) : first.costs(), own);
            long[] right = secondPlace == 1 ? turn(second) : second.costs();
            return leastSums(left, right, rows, columns, own.length);
        });
        return new CostTable(new int[]{Math.min(oneOther, twoOther), Math.max(oneOther, twoOther)},
                new int[]{rows, columns}, costs);
    }

    private static long[] leastSums(long[] left, long[] right, int rows, int columns, int length) {
        long[] costs = new long[rows * columns];
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                costs[row * columns + column] = least(left, row * length, right, column * length, length);
            }
        }
        return costs;
    }

    private static long[] plus(long[] rows, long[] own) {
        long[] sums = rows.clone();
        for (int index = 0; index < sums.length; index++) {
            sums[index] += own[index % own.length];
        }
        return sums;
    }

    private static long[] turn(CostTable table) {
        int rows = table.sizes()[0];
        int columns = table.sizes()[1];
        long[] turned = new long[rows * columns];
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                turned[column * rows + row] = table.costs()[row * columns + column];
            }
        }
        return turned;
    }

    private CostTable many(int variable, long[] own, List<CostTable> around) {
        TreeMap<Integer, Integer> sizes = new TreeMap<>();
        for (CostTable table : around) {
            for (int place = 0; place < table.scope().length; place++) {
                sizes.put(table.scope()[place], table.sizes()[place]);
            }
        }
        sizes.remove(variable);
        int[] scope = sizes.keySet().stream().mapToInt(Integer::intValue).toArray();
        int[] scopeSizes = sizes.values().stream().mapToInt(Integer::intValue).toArray();
        long[] costs = new Elimination(variable, own, around, scope, scopeSizes).least();
        limit.spend((long) costs.length * own.length);
        return new CostTable(scope, scopeSizes, costs);
    }
}
