package org.coursewright.bond.internal.proof;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.coursewright.bond.internal.run.RunShape;
import org.coursewright.bond.internal.stack.PatternPool;
import org.coursewright.bond.internal.stack.RunStack;
import org.coursewright.bond.internal.stack.Skeleton;

/** What is known of the choices of runs of consecutive courses, kept by pair of shapes. */
final class PairBound {

    /**
     * What decides which choices go together. Short laps that third runs may need with the ends of these need not be
     * alike: nothing that is looked into between the two meets them, so the fewest that are let pass are enough for all.
     */
    private record Pair(RunShape below, RunShape above, long offset, List<Long> round, List<Long> roundOther) {
    }

    private final RunStack stack;
    private final Skeleton skeleton;
    private final PatternsFound found;
    private final LevelFit levels;
    private final Map<RunShape, List<RunChoice>> choices = new HashMap<>();
    private final Map<RunStack.Contact, PairChoices> byContact = new HashMap<>();
    private final Map<Pair, PairChoices> known = new HashMap<>();

    /** @param found learns patterns that go together */
    PairBound(RunStack stack, LevelFit levels, PatternsFound found) {
        this.stack = stack;
        this.levels = levels;
        this.found = found;
        skeleton = stack.skeleton();
    }

    List<RunChoice> choices(PatternPool pool) {
        return choices.computeIfAbsent(pool.shape(), shape -> RunChoice.of(pool));
    }

    /** Tells the choices of one shape apart further. */
    void split(RunShape shape, List<RunChoice> now, int[] parts) {
        choices.put(shape, now);
        byContact.clear();
        known.replaceAll((pair, each) -> {
            boolean lower = pair.below().equals(shape);
            boolean upper = pair.above().equals(shape);
            if (!lower && !upper) {
                return each;
            }
            List<RunChoice> below = choices.get(pair.below());
            List<RunChoice> above = choices.get(pair.above());
            return each.split(below, lower ? parts : same(below), above, upper ? parts : same(above));
        });
    }

    private static int[] same(List<RunChoice> choices) {
        int[] same = new int[choices.size()];
        Arrays.setAll(same, index -> index);
        return same;
    }

    /** The choices of the two runs of a contact. */
    PairChoices of(RunStack.Contact contact) {
        return byContact.computeIfAbsent(contact, each -> known.computeIfAbsent(pair(contact),
                pair -> new PairChoices(stack, contact, choices(stack.pool(contact.below())),
                        choices(stack.pool(contact.above())), levels, found)));
    }

    private Pair pair(RunStack.Contact contact) {
        return new Pair(stack.pool(contact.below()).shape(), stack.pool(contact.above()).shape(), contact.offset(),
                skeleton.joints(contact.below(), contact.above()), skeleton.joints(contact.above(), contact.below()));
    }
}
