package org.coursewright.bond.internal.choice;

import java.util.Arrays;
import java.util.List;

/** Minimises a sum of cost tables over one variable, for every choice of the others. */
final class Elimination {

    private final long[] own;
    /** By table, its costs with the variable running fastest. */
    private final long[][] rows;
    /** By table and variable of the scope, how far the row moves from one value to the next. */
    private final int[][] steps;
    private final int[] sizes;

    /**
     * @param scope the other variables of the tables, ascending
     * @param sizes how many values each has
     */
    Elimination(int variable, long[] own, List<CostTable> around, int[] scope, int[] sizes) {
        this.own = own;
        this.sizes = sizes;
        rows = new long[around.size()][];
        steps = new int[around.size()][scope.length];
        for (int each = 0; each < rows.length; each++) {
            CostTable table = around.get(each);
            int place = table.place(variable);
            rows[each] = turned(table, place);
            for (int other = 0; other < table.scope().length; other++) {
                if (other != place) {
                    int stride = table.stride(other);
                    steps[each][Arrays.binarySearch(scope, table.scope()[other])] = other < place
                            ? stride
                            : stride * own.length;
                }
            }
        }
    }

    private static long[] turned(CostTable table, int place) {
        int stride = table.stride(place);
        int size = table.sizes()[place];
        if (stride == 1) {
            return table.costs();
        }
        long[] turned = new long[table.costs().length];
        for (int start = 0; start < turned.length; start += stride * size) {
            for (int value = 0; value < size; value++) {
                for (int rest = 0; rest < stride; rest++) {
                    turned[start + rest * size + value] = table.costs()[start + value * stride + rest];
                }
            }
        }
        return turned;
    }

    /** The least sums, by value of the first variable of the scope, then the second, and so on. */
    long[] least() {
        long[] costs = new long[Arrays.stream(sizes).reduce(1, Math::multiplyExact)];
        int[] values = new int[sizes.length];
        int[] at = new int[rows.length];
        long[] sum = new long[own.length];
        for (int index = 0; index < costs.length; index++) {
            System.arraycopy(own, 0, sum, 0, sum.length);
            for (int table = 0; table < rows.length; table++) {
                add(sum, rows[table], at[table]);
            }
            costs[index] = least(sum);
            step(values, at);
        }
        return costs;
    }

    private static void add(long[] sum, long[] row, int from) {
        for (int value = 0; value < sum.length; value++) {
            sum[value] += row[from + value];
        }
    }

    private static long least(long[] sum) {
        long least = Long.MAX_VALUE;
        for (long each : sum) {
            least = Math.min(least, each);
        }
        return least;
    }

    /** To the next choice of values; the last variable runs fastest. */
    private void step(int[] values, int[] at) {
        for (int place = sizes.length - 1; place >= 0; place--) {
            boolean turns = ++values[place] == sizes[place];
            for (int table = 0; table < at.length; table++) {
                at[table] += steps[table][place] * (turns ? 1 - sizes[place] : 1);
            }
            if (!turns) {
                return;
            }
            values[place] = 0;
        }
    }
}
