package org.coursewright.bond.internal.laying;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.coursewright.bond.internal.choice.CostNetwork;
import org.coursewright.bond.internal.run.RunShape;
import org.coursewright.bond.internal.stack.PatternPool;
import org.coursewright.bond.internal.stack.RunStack;
import org.coursewright.measure.Progress;

/** Chooses the best combination of the patterns that are in the pools; remembers how patterns lap while the pools grow. */
final class PatternChoice {

    private record Shapes(RunShape below, RunShape above, long offset) {
    }

    /** Patterns of two runs that come into question; arrays compare by identity, so equal keys mean the same ones. */
    private record Choice(LapTable table, int[] lower, int[] upper) {
    }

    private final RunStack stack;
    private final Map<Shapes, LapTable> lapTables = new HashMap<>();
    private final Map<RunStack.Contact, LapTable> tables = new IdentityHashMap<>();

    PatternChoice(RunStack stack) {
        this.stack = stack;
    }

    /** By run, the index of the chosen pattern in its pool. */
    int[] choose(Progress progress) {
        Optional<int[]> cheapest = tables.isEmpty() ? new CheapestPatterns(stack).choose(progress) : Optional.empty();
        return cheapest.orElseGet(() -> weigh(progress));
    }

    /** As {@link #choose}, from all patterns. */
    int[] weigh(Progress progress) {
        List<int[]> candidates = candidates();
        long[][] own = new long[candidates.size()][];
        Map<int[], long[]> costs = new HashMap<>();
        for (int run = 0; run < own.length; run++) {
            PatternPool pool = stack.pool(run);
            own[run] = costs.computeIfAbsent(candidates.get(run), indexes -> Arrays.stream(indexes)
                    .mapToLong(index -> pool.patterns().get(index).cost()).toArray());
        }
        CostNetwork network = new CostNetwork(own);
        Map<Choice, long[]> laps = new HashMap<>();
        for (RunStack.Contact contact : stack.contacts()) {
            progress.checkCancelled();
            Choice choice = new Choice(table(contact), candidates.get(contact.below()),
                    candidates.get(contact.above()));
            network.add(contact.below(), contact.above(),
                    laps.computeIfAbsent(choice, key -> key.table().costs(key.lower(), key.upper())));
        }
        int[] chosen = network.solve(progress);
        for (int run = 0; run < chosen.length; run++) {
            chosen[run] = candidates.get(run)[chosen[run]];
        }
        return chosen;
    }

    /** By run the patterns that come into question; one array for all runs between neighbours alike. */
    private List<int[]> candidates() {
        Map<List<Object>, int[]> known = new HashMap<>();
        List<int[]> candidates = new ArrayList<>();
        for (int run = 0; run < stack.runs().size(); run++) {
            PatternPool pool = stack.pool(run);
            List<Candidates.Side> sides = new ArrayList<>();
            for (RunStack.Contact contact : stack.contactsOf(run)) {
                sides.add(new Candidates.Side(table(contact), contact.below() == run));
            }
            candidates.add(known.computeIfAbsent(List.of(pool, sides), key -> new Candidates(pool, sides).find()));
        }
        return candidates;
    }

    private LapTable table(RunStack.Contact contact) {
        return tables.computeIfAbsent(contact, this::tableOfShapes);
    }

    private LapTable tableOfShapes(RunStack.Contact contact) {
        PatternPool below = stack.pool(contact.below());
        PatternPool above = stack.pool(contact.above());
        Optional<LapTable> mirror = Optional
                .ofNullable(lapTables.get(new Shapes(above.shape(), below.shape(), -contact.offset())));
        return lapTables.computeIfAbsent(new Shapes(below.shape(), above.shape(), contact.offset()),
                shapes -> new LapTable(below, above, contact.offset(), stack.masonry().lap(), contact.forced(),
                        mirror));
    }
}
