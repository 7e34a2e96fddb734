package org.coursewright.bond.internal.choice;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

import org.coursewright.measure.Progress;

/**
 * Chooses one value for every variable so that the sum of costs of values and of pairs of values is least. Variables
 * are eliminated one after another: the best value of a variable is found for every choice of its neighbours and
 * replaced by a cost on these. That is exact; time and memory grow with the number of neighbours a variable has when its
 * turn comes, one or two in nearly every wall. Where it would have too many, one neighbour is fixed first and the result
 * is no longer proven. Equal tables are combined once, so tall bands of equal courses cost no more than low ones.
 *
 * <p>Ties go to the value with the lowest index.
 */
public final class CostNetwork {

    /** Values looked at to eliminate a variable, unless said otherwise. */
    public static final long MOST_WORK = 6_000_000;

    private final long[][] unary;
    private final List<List<CostTable>> tables = new ArrayList<>();
    private final boolean[] gone;
    private final int[] chosen;
    private final Deque<Integer> order = new ArrayDeque<>();
    private final TableAlgebra algebra;
    private final long mostWork;
    private boolean exact = true;

    /** @param unary costs of the values of every variable, at least one value each; not changed */
    public CostNetwork(long[][] unary) {
        this(unary, new TableAlgebra(new WorkLimit()), MOST_WORK);
    }

    /**
     * @param algebra what combines tables; remembers what it has combined for other networks with the same tables
     * @param mostWork values looked at to eliminate a variable; where it would be more, a neighbour is fixed
     */
    CostNetwork(long[][] unary, TableAlgebra algebra, long mostWork) {
        this.algebra = algebra;
        this.mostWork = mostWork;
        this.unary = unary.clone();
        gone = new boolean[unary.length];
        chosen = new int[unary.length];
        for (int variable = 0; variable < unary.length; variable++) {
            tables.add(new ArrayList<>());
        }
    }

    /** Adds the cost of pairs: {@code costs[i * values of second + j]} for value i of the first and j of the second. */
    public void add(int first, int second, long[] costs) {
        add(new CostTable(new int[]{first, second}, new int[]{unary[first].length, unary[second].length}, costs));
    }

    /** @return the index of the chosen value of every variable */
    public int[] solve(Progress progress) {
        List<Map.Entry<Integer, List<CostTable>>> removed = new ArrayList<>();
        int left = unary.length;
        while (left > 0) {
            progress.checkCancelled();
            fillOrder();
            while (!order.isEmpty()) {
                int variable = order.remove();
                if (gone[variable]) {
                    continue;
                }
                relieve(variable);
                removed.add(Map.entry(variable, List.copyOf(tables.get(variable))));
                eliminate(variable);
                left--;
            }
        }
        for (int index = removed.size() - 1; index >= 0; index--) {
            int variable = removed.get(index).getKey();
            chosen[variable] = best(variable, removed.get(index).getValue());
        }
        return chosen.clone();
    }

    /** Whether the choice of {@link #solve} is the best there is. */
    public boolean isExact() {
        return exact;
    }

    /**
     * Variables whose elimination is cheapest now; none next to another, so that all of them stay cheap and equal
     * stretches are halved alike.
     */
    private void fillOrder() {
        int[] degrees = new int[unary.length];
        int least = Integer.MAX_VALUE;
        for (int variable = 0; variable < unary.length; variable++) {
            if (!gone[variable]) {
                degrees[variable] = neighbours(variable).size();
                least = Math.min(least, degrees[variable]);
            }
        }
        boolean[] blocked = new boolean[unary.length];
        for (int variable = 0; variable < unary.length; variable++) {
            if (!gone[variable] && !blocked[variable] && degrees[variable] <= Math.max(least, 1)) {
                order.add(variable);
                neighbours(variable).forEach(neighbour -> blocked[neighbour] = true);
            }
        }
    }

    private TreeSet<Integer> neighbours(int variable) {
        TreeSet<Integer> found = new TreeSet<>();
        for (CostTable table : tables.get(variable)) {
            for (int other : table.scope()) {
                if (other != variable) {
                    found.add(other);
                }
            }
        }
        return found;
    }

    /** Fixes neighbours until the variable can be eliminated in bounded work. */
    private void relieve(int variable) {
        while (work(variable) > mostWork) {
            exact = false;
            int busiest = -1;
            for (int neighbour : neighbours(variable)) {
                if (busiest < 0 || tables.get(neighbour).size() > tables.get(busiest).size()) {
                    busiest = neighbour;
                }
            }
            fix(busiest);
        }
    }

    private long work(int variable) {
        long work = unary[variable].length;
        for (int neighbour : neighbours(variable)) {
            work = Math.min(Long.MAX_VALUE / 1024 / 1024, work * unary[neighbour].length);
        }
        return work;
    }

    /** Leaves a variable only the value that looks best from where it stands. */
    private void fix(int variable) {
        long[] outlook = unary[variable].clone();
        for (CostTable table : tables.get(variable)) {
            table.addLeast(variable, outlook);
        }
        int value = 0;
        for (int other = 1; other < outlook.length; other++) {
            value = outlook[other] < outlook[value] ? other : value;
        }
        long[] only = new long[outlook.length];
        Arrays.fill(only, Long.MAX_VALUE / 8);
        only[value] = unary[variable][value];
        unary[variable] = only;
        for (CostTable table : List.copyOf(tables.get(variable))) {
            remove(table);
            add(table.without(variable, value));
        }
    }

    private void eliminate(int variable) {
        List<CostTable> around = List.copyOf(tables.get(variable));
        around.forEach(this::remove);
        gone[variable] = true;
        if (!around.isEmpty()) {
            add(algebra.eliminate(variable, unary[variable], around));
        }
    }

    private void remove(CostTable table) {
        for (int variable : table.scope()) {
            tables.get(variable).removeIf(other -> other == table);
        }
    }

    /** Adds the cost of some variables together. */
    public void add(CostTable table) {
        int[] scope = table.scope();
        if (scope.length == 0) {
            return;
        }
        if (scope.length == 1) {
            unary[scope[0]] = algebra.sum(unary[scope[0]], table.costs());
            return;
        }
        CostTable sum = table;
        for (CostTable same : List.copyOf(tables.get(scope[0]))) {
            if (Arrays.equals(same.scope(), scope)) {
                remove(same);
                sum = new CostTable(scope, table.sizes(), algebra.sum(same.costs(), table.costs()));
            }
        }
        for (int variable : scope) {
            tables.get(variable).add(sum);
        }
    }

    private int best(int variable, List<CostTable> around) {
        int best = 0;
        long least = Long.MAX_VALUE;
        for (int value = 0; value < unary[variable].length; value++) {
            chosen[variable] = value;
            long cost = unary[variable][value];
            for (CostTable table : around) {
                cost += table.at(chosen);
            }
            if (cost < least) {
                least = cost;
                best = value;
            }
        }
        return best;
    }
}
