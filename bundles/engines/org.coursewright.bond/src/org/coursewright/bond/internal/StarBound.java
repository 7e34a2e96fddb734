package org.coursewright.bond.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Finds out which choices of more than two runs cannot go together: a run between patterns of several neighbours, or two
 * runs on one another between patterns of their other neighbours, though every two of them would.
 */
final class StarBound {

    /** Larger tables of choices are not worth their time. */
    private static final int MOST_VALUES = 20_000;

    private final RunStack stack;
    private final PairBound pairs;
    private final LevelFit levels;
    private final PatternsFound found;
    private final Map<List<Object>, Boolean> pairFits = new HashMap<>();
    private final Map<List<Object>, Boolean> fills = new HashMap<>();
    private final Map<List<Integer>, CostTable> tables = new TreeMap<>(StarBound::compare);

    /** @param found learns patterns that go together */
    StarBound(RunStack stack, PairBound pairs, LevelFit levels, PatternsFound found) {
        this.stack = stack;
        this.pairs = pairs;
        this.levels = levels;
        this.found = found;
    }

    /** For some runs together: nothing, or for choices known to exclude one another a lap violation. */
    Collection<CostTable> tables() {
        return tables.values();
    }

    /** Tells the choices of one shape apart further; tables that grow too large are left out. */
    void split(RunShape shape, int[] parts) {
        for (CostTable table : List.copyOf(tables.values())) {
            CostTable split = table;
            for (int place = 0; place < table.scope().length; place++) {
                if (stack.pool(table.scope()[place]).shape().equals(shape)) {
                    split = split.split(place, parts);
                }
            }
            List<Integer> runs = Arrays.stream(table.scope()).boxed().toList();
            if (split.costs().length > MOST_VALUES) {
                tables.remove(runs);
            } else {
                tables.put(runs, split);
            }
        }
    }

    /** @return whether the choices of all runs hold some that exclude one another and were not known to */
    boolean excludes(int[] values) {
        boolean any = false;
        for (int run = 0; run < values.length; run++) {
            any |= choice(run, values).pattern().isEmpty() && excludesRun(run, values);
        }
        for (RunStack.Contact contact : stack.contacts()) {
            boolean open = choice(contact.below(), values).pattern().isEmpty()
                    && choice(contact.above(), values).pattern().isEmpty();
            any |= open && excludesPair(contact, values);
        }
        return any;
    }

    private RunChoice choice(int run, int[] values) {
        return pairs.choices(stack.pool(run)).get(values[run]);
    }

    private List<RunStack.Contact> fixed(int run, int except, int[] values) {
        return stack.contactsOf(run).stream().filter(contact -> contact.other(run) != except)
                .filter(contact -> choice(contact.other(run), values).pattern().isPresent()).toList();
    }

    private boolean excludesRun(int run, int[] values) {
        List<RunStack.Contact> fixed = fixed(run, -1, values);
        if (fixed.size() < 2 || mayFill(run, fixed, values)) {
            return false;
        }
        List<RunStack.Contact> needed = new ArrayList<>(fixed);
        for (RunStack.Contact contact : fixed) {
            List<RunStack.Contact> fewer = new ArrayList<>(needed);
            fewer.remove(contact);
            if (fewer.size() > 1 && !mayFill(run, fewer, values)) {
                needed = fewer;
            }
        }
        TreeSet<Integer> scope = new TreeSet<>(List.of(run));
        needed.forEach(contact -> scope.add(contact.other(run)));
        return exclude(scope, run, values);
    }

    /** Whether the choice of a run goes between the patterns of these neighbours. */
    private boolean mayFill(int run, List<RunStack.Contact> fixed, int[] values) {
        RunChoice choice = choice(run, values);
        return fills.computeIfAbsent(List.of(stack.pool(run).shape(), stack.skeleton().joints(run),
                neighbours(run, fixed, values), choice), key -> mayFill(run, choice, windows(run, -1, fixed, values)));
    }

    private boolean excludesPair(RunStack.Contact contact, int[] values) {
        List<RunStack.Contact> fixedBelow = fixed(contact.below(), contact.above(), values);
        List<RunStack.Contact> fixedAbove = fixed(contact.above(), contact.below(), values);
        if (fixedBelow.isEmpty() && fixedAbove.isEmpty()) {
            return false;
        }
        List<Object> key = List.of(stack.pool(contact.below()).shape(), stack.pool(contact.above()).shape(),
                contact.offset(), stack.skeleton().joints(contact.below()), stack.skeleton().joints(contact.above()),
                neighbours(contact.below(), fixedBelow, values), neighbours(contact.above(), fixedAbove, values),
                choice(contact.below(), values), choice(contact.above(), values));
        boolean fits = pairFits.computeIfAbsent(key,
                unknown -> levels.mayFit(contact, choice(contact.below(), values), choice(contact.above(), values),
                        windows(contact.below(), contact.above(), fixedBelow, values),
                        windows(contact.above(), contact.below(), fixedAbove, values)));
        if (fits) {
            return false;
        }
        TreeSet<Integer> scope = new TreeSet<>(List.of(contact.below(), contact.above()));
        fixedBelow.forEach(fixed -> scope.add(fixed.other(contact.below())));
        fixedAbove.forEach(fixed -> scope.add(fixed.other(contact.above())));
        return exclude(scope, -1, values);
    }

    private boolean mayFill(int run, RunChoice choice, Windows windows) {
        PatternPool pool = stack.pool(run);
        int forced = stack.skeleton().forced(run);
        if (choice.isGroup()) {
            return pool.mayFill(windows, forced, choice.sets(), pool.leastCuts() + choice.extra());
        }
        return choice.extra() == RunChoice.MOST_EXTRA
                || pool.mayFill(windows, forced, choice.extra(), pattern -> found.add(pool.shape(), pattern));
    }

    private List<Object> neighbours(int run, List<RunStack.Contact> fixed, int[] values) {
        List<Object> neighbours = new ArrayList<>();
        for (RunStack.Contact contact : fixed) {
            neighbours.add(choice(contact.other(run), values).pattern().orElseThrow());
            neighbours.add(contact.offsetFrom(run));
        }
        return neighbours;
    }

    private Windows windows(int run, int except, List<RunStack.Contact> fixed, int[] values) {
        int[] told = new int[fixed.size() + 1];
        told[0] = except;
        for (int index = 0; index < fixed.size(); index++) {
            told[index + 1] = fixed.get(index).other(run);
        }
        Windows windows = stack.skeleton().certain(run, told);
        for (RunStack.Contact contact : fixed) {
            windows.add(choice(contact.other(run), values).pattern().orElseThrow(), contact.offsetFrom(run),
                    stack.masonry().lap(), stack.pool(run).shape().length());
        }
        return windows;
    }

    /** @param whole a run of which all choices with no more cuts are excluded along with its own, or -1 */
    private boolean exclude(TreeSet<Integer> runs, int whole, int[] values) {
        int[] scope = runs.stream().mapToInt(Integer::intValue).toArray();
        int[] sizes = Arrays.stream(scope).map(run -> pairs.choices(stack.pool(run)).size()).toArray();
        long size = Arrays.stream(sizes).asLongStream().reduce(1,
                (one, other) -> Math.min(Integer.MAX_VALUE, one * other));
        if (size > MOST_VALUES) {
            return false;
        }
        List<Integer> key = List.copyOf(runs);
        CostTable known = tables.getOrDefault(key, new CostTable(scope, sizes, new long[(int) size]));
        CostTable more = new CostTable(scope, sizes, known.costs().clone());
        more.costs()[more.index(values)] = CostNetwork.cost(1, 0, 0);
        if (whole >= 0 && !choice(whole, values).isGroup()) {
            excludeFewer(more, whole, values);
        }
        tables.put(key, more);
        return true;
    }

    /** What no filling with so many cuts does, none with fewer does. */
    private void excludeFewer(CostTable table, int run, int[] values) {
        List<RunChoice> choices = pairs.choices(stack.pool(run));
        int[] others = values.clone();
        for (int value = 0; value < choices.size(); value++) {
            if (choices.get(value).extra() <= choice(run, values).extra()) {
                others[run] = value;
                table.costs()[table.index(others)] = CostNetwork.cost(1, 0, 0);
            }
        }
    }

    private static int compare(List<Integer> one, List<Integer> other) {
        return Arrays.compare(one.toArray(Integer[]::new), other.toArray(Integer[]::new));
    }
}
