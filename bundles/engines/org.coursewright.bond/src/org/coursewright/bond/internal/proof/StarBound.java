package org.coursewright.bond.internal.proof;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

import org.coursewright.bond.internal.choice.ExclusionNetwork;
import org.coursewright.bond.internal.lap.Windows;
import org.coursewright.bond.internal.run.Pattern;
import org.coursewright.bond.internal.run.RunShape;
import org.coursewright.bond.internal.stack.PatternPool;
import org.coursewright.bond.internal.stack.RunStack;

/**
 * Finds out which choices of more than two runs cannot go together: a run between patterns of several neighbours, or two
 * runs on one another between patterns of their other neighbours, though every two of them would.
 */
final class StarBound {

    private final RunStack stack;
    private final PairBound pairs;
    private final LevelFit levels;
    private final PatternsFound found;
    private final Map<List<Object>, Boolean> pairFits = new HashMap<>();
    private final Map<List<Object>, Boolean> fills = new HashMap<>();
    private final AlikeRuns alike;
    private final StarExclusions known = new StarExclusions();

    /** @param found learns patterns that go together */
    StarBound(RunStack stack, PairBound pairs, LevelFit levels, PatternsFound found) {
        this.stack = stack;
        this.pairs = pairs;
        this.levels = levels;
        this.found = found;
        alike = new AlikeRuns(stack);
    }

    void addTo(ExclusionNetwork network) {
        known.addTo(network);
    }

    /** Whether a run's choice is known to be excluded by the choices round it; nothing is looked into. */
    boolean isKnown(int run, int[] values) {
        return known.isKnown(run, values);
    }

    /** Tells the choices of one shape apart further. */
    void split(RunShape shape, int[] parts) {
        known.split(run -> stack.pool(run).shape().equals(shape), parts);
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

    /** Places among the contacts of a run of neighbours filled with one pattern. */
    private List<Integer> fixed(int run, int except, int[] values) {
        List<Integer> places = new ArrayList<>();
        for (int place = 0; place < stack.contactsOf(run).size(); place++) {
            int other = neighbour(run, place);
            if (other != except && choice(other, values).pattern().isPresent()) {
                places.add(place);
            }
        }
        return places;
    }

    private int neighbour(int run, int place) {
        return stack.contactsOf(run).get(place).other(run);
    }

    private boolean excludesRun(int run, int[] values) {
        List<Integer> fixed = fixed(run, -1, values);
        if (fixed.size() < 2 || mayFill(run, fixed, values)) {
            return false;
        }
        List<Integer> needed = fixed;
        for (Integer place : fixed) {
            List<Integer> fewer = without(needed, place);
            if (fewer.size() > 1 && !mayFill(run, fewer, values)) {
                needed = fewer;
            }
        }
        List<Integer> places = needed;
        StarExclusions.Star star = known.star(List.of(alike.kind(run), places), () -> alike.scopes(run, places),
                this::choices);
        int[] scope = alike.scope(run, places);
        List<long[]> more = new ArrayList<>(List.of(excluded(star, scope, run, values)));
        int ahead = star.ahead();
        for (Integer place : places) {
            int[] others = values.clone();
            int neighbour = neighbour(run, place);
            for (int step = 1; step < ahead && next(neighbour, others); step++) {
                if (choice(neighbour, others).pattern().isPresent() && !mayFill(run, places, others)) {
                    more.add(excluded(star, scope, run, others));
                }
            }
        }
        return star.add(more.stream().flatMapToLong(Arrays::stream).toArray());
    }

    /** The next choice of a run, if there is any. */
    private boolean next(int run, int[] values) {
        values[run]++;
        return values[run] < choices(run);
    }

    private int choices(int run) {
        return pairs.choices(stack.pool(run)).size();
    }

    private static List<Integer> without(List<Integer> places, Integer place) {
        return places.stream().filter(each -> !each.equals(place)).toList();
    }

    /** Whether the choice of a run goes between the patterns of these neighbours. */
    private boolean mayFill(int run, List<Integer> fixed, int[] values) {
        RunChoice choice = choice(run, values);
        return fills.computeIfAbsent(List.of(alike.kind(run), fixed, neighbours(run, fixed, values), choice),
                key -> mayFill(run, choice, windows(run, -1, fixed, values)));
    }

    private boolean excludesPair(RunStack.Contact contact, int[] values) {
        List<Integer> below = fixed(contact.below(), contact.above(), values);
        List<Integer> above = fixed(contact.above(), contact.below(), values);
        if (below.isEmpty() && above.isEmpty() || mayFit(contact, below, above, values)) {
            return false;
        }
        for (Integer place : List.copyOf(below)) {
            List<Integer> fewer = without(below, place);
            below = mayFit(contact, fewer, above, values) ? below : fewer;
        }
        for (Integer place : List.copyOf(above)) {
            List<Integer> fewer = without(above, place);
            above = mayFit(contact, below, fewer, values) ? above : fewer;
        }
        List<Integer> placesBelow = below;
        List<Integer> placesAbove = above;
        StarExclusions.Star star = known.star(List.of(alike.kind(contact), below, above),
                () -> alike.scopes(contact, placesBelow, placesAbove), this::choices);
        return star.add(star.exclusions().index(alike.scope(contact, below, above), values));
    }

    private boolean mayFit(RunStack.Contact contact, List<Integer> fixedBelow, List<Integer> fixedAbove, int[] values) {
        List<Object> key = List.of(alike.kind(contact), fixedBelow, fixedAbove,
                neighbours(contact.below(), fixedBelow, values), neighbours(contact.above(), fixedAbove, values),
                choice(contact.below(), values), choice(contact.above(), values));
        return pairFits.computeIfAbsent(key,
                unknown -> levels.mayFit(contact, choice(contact.below(), values), choice(contact.above(), values),
                        windows(contact.below(), contact.above(), fixedBelow, values),
                        windows(contact.above(), contact.below(), fixedAbove, values)));
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

    private List<Pattern> neighbours(int run, List<Integer> fixed, int[] values) {
        return fixed.stream().map(place -> choice(neighbour(run, place), values).pattern().orElseThrow()).toList();
    }

    private Windows windows(int run, int except, List<Integer> fixed, int[] values) {
        int[] told = new int[fixed.size() + 1];
        told[0] = except;
        for (int index = 0; index < fixed.size(); index++) {
            told[index + 1] = neighbour(run, fixed.get(index));
        }
        Windows windows = stack.skeleton().certain(run, told);
        for (int place : fixed) {
            RunStack.Contact contact = stack.contactsOf(run).get(place);
            windows.add(choice(contact.other(run), values).pattern().orElseThrow(), contact.offsetFrom(run),
                    stack.masonry().lap(), stack.pool(run).shape().length());
        }
        return windows;
    }

    /** What no filling of the run with so many cuts does, none with fewer does. */
    private long[] excluded(StarExclusions.Star star, int[] scope, int run, int[] values) {
        RunChoice chosen = choice(run, values);
        if (chosen.isGroup()) {
            return new long[]{star.exclusions().index(scope, values)};
        }
        List<RunChoice> choices = pairs.choices(stack.pool(run));
        int[] others = values.clone();
        return IntStream.range(0, choices.size()).filter(value -> choices.get(value).extra() <= chosen.extra())
                .mapToLong(value -> {
                    others[run] = value;
                    return star.exclusions().index(scope, others);
                }).toArray();
    }
}
