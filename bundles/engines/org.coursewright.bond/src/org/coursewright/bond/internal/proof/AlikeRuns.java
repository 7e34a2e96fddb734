package org.coursewright.bond.internal.proof;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

import org.coursewright.bond.internal.stack.RunStack;

/**
 * Runs that lie alike: of one shape, with neighbours of the same shapes in the same places and the same joints round them.
 * What is found out of one of them and its neighbours holds for all.
 */
final class AlikeRuns {

    private final RunStack stack;
    private final List<List<Object>> kinds = new ArrayList<>();
    private final Map<List<Object>, List<Integer>> runs = new HashMap<>();
    private final Map<List<Object>, List<RunStack.Contact>> contacts = new HashMap<>();

    AlikeRuns(RunStack stack) {
        this.stack = stack;
        Map<List<Object>, List<Object>> known = new HashMap<>();
        for (int run = 0; run < stack.runs().size(); run++) {
            List<Object> kind = kindOf(run);
            kinds.add(known.computeIfAbsent(kind, key -> kind));
            runs.computeIfAbsent(kind, key -> new ArrayList<>()).add(run);
        }
        for (RunStack.Contact contact : stack.contacts()) {
            contacts.computeIfAbsent(kind(contact), key -> new ArrayList<>()).add(contact);
        }
    }

    private List<Object> kindOf(int run) {
        List<Object> kind = new ArrayList<>();
        kind.add(stack.pool(run).shape());
        kind.add(stack.skeleton().joints(run));
        kind.add(stack.skeleton().forced(run));
        for (RunStack.Contact contact : stack.contactsOf(run)) {
            int other = contact.other(run);
            kind.add(stack.pool(other).shape());
            kind.add(contact.offsetFrom(run));
            kind.add(contact.below() == run);
        }
        return kind;
    }

    /** What those alike have in common. */
    List<Object> kind(int run) {
        return kinds.get(run);
    }

    /** What contacts alike have in common. */
    List<Object> kind(RunStack.Contact contact) {
        return List.of(kinds.get(contact.below()), kinds.get(contact.above()), contact.offset());
    }

    /** A run and its neighbours in these places among its contacts, ascending. */
    int[] scope(int run, List<Integer> places) {
        TreeSet<Integer> scope = new TreeSet<>(List.of(run));
        places.forEach(place -> scope.add(neighbour(run, place)));
        return ascending(scope);
    }

    /** The same for each run like this. */
    List<int[]> scopes(int run, List<Integer> places) {
        return runs.get(kinds.get(run)).stream().map(like -> scope(like, places)).toList();
    }

    /** The runs of a contact and their neighbours in these places among the contacts of each, ascending. */
    int[] scope(RunStack.Contact contact, List<Integer> placesBelow, List<Integer> placesAbove) {
        TreeSet<Integer> scope = new TreeSet<>(List.of(contact.below(), contact.above()));
        placesBelow.forEach(place -> scope.add(neighbour(contact.below(), place)));
        placesAbove.forEach(place -> scope.add(neighbour(contact.above(), place)));
        return ascending(scope);
    }

    /** The same for each contact like this. */
    List<int[]> scopes(RunStack.Contact contact, List<Integer> placesBelow, List<Integer> placesAbove) {
        return contacts.get(kind(contact)).stream().map(like -> scope(like, placesBelow, placesAbove)).toList();
    }

    private int neighbour(int run, int place) {
        return stack.contactsOf(run).get(place).other(run);
    }

    private static int[] ascending(TreeSet<Integer> scope) {
        return scope.stream().mapToInt(Integer::intValue).toArray();
    }
}
