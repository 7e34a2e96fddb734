package org.coursewright.bond.internal.pieces;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

import org.coursewright.bond.Piece;
import org.coursewright.bond.internal.run.Masonry;
import org.coursewright.bond.internal.run.Pattern;
import org.coursewright.bond.internal.run.PieceKind;
import org.coursewright.bond.internal.run.PieceSet;
import org.coursewright.bond.internal.run.RunShape;

/**
 * All orders of the pieces of a set as steps between states; or of several sets that differ only in the lengths of their
 * cut pieces, seen together. A state says how many pieces of each kind have been used, and so where the joint after them
 * lies, between two bounds if there are several sets; state 0 has used none, the last state all.
 *
 * <p>The joints of a run share what its pieces leave of it, so after k pieces, of m joints in all and with s joints before
 * the first piece, a joint begins at m times the pieces used and (k - 1 + s) times what is left. For every kind of piece
 * that is linear in its length, and so greatest and least at the ends of what its length ranges over.
 */
public final class PieceOrders {

    private final RunShape shape;
    private final Masonry masonry;
    private final List<PieceSet> sets;
    private final List<PieceKind> kinds;
    /** The least and the greatest length of the pieces of every kind. */
    private final long[] shortest;
    private final long[] longest;
    private final int[] strides;
    private final int states;
    private final long[] startMost;
    private final long[] endLeast;
    /** By state, one bit for each kind of which there are pieces left. */
    private final int[] left;
    private final int startJoints;
    private final int joints;
    private final int pieces;
    private List<List<PieceSet>> halves = List.of();

    /** @param sets at least one, all of one {@linkplain PieceSet#makeUp make-up} */
    public PieceOrders(RunShape shape, Masonry masonry, List<PieceSet> sets) {
        this.shape = shape;
        this.masonry = masonry;
        this.sets = sets;
        kinds = PieceKind.of(sets.get(0), masonry);
        shortest = kinds.stream().mapToLong(PieceKind::length).toArray();
        longest = shortest.clone();
        for (PieceSet set : sets.subList(1, sets.size())) {
            List<PieceKind> each = PieceKind.of(set, masonry);
            for (int kind = 0; kind < shortest.length; kind++) {
                shortest[kind] = Math.min(shortest[kind], each.get(kind).length());
                longest[kind] = Math.max(longest[kind], each.get(kind).length());
            }
        }
        startJoints = shape.startJoints();
        joints = sets.get(0).joints();
        pieces = sets.get(0).pieces();
        strides = new int[kinds.size()];
        int product = 1;
        for (int kind = 0; kind < strides.length; kind++) {
            strides[kind] = product;
            product = Math.multiplyExact(product, kinds.get(kind).count() + 1);
        }
        states = product;
        startMost = new long[states];
        endLeast = new long[states];
        left = new int[states];
        int[] used = new int[strides.length];
        for (int state = 0; state < states; state++) {
            note(state, used);
            count(used);
        }
    }

    private void note(int state, int[] used) {
        int before = startJoints - 1;
        for (int kind = 0; kind < used.length; kind++) {
            before += used[kind];
            left[state] |= used[kind] < kinds.get(kind).count() ? 1 << kind : 0;
        }
        long start = before * shape.length();
        long end = start + shape.length();
        for (int kind = 0; kind < used.length; kind++) {
            int count = kinds.get(kind).count();
            long toStart = (long) joints * used[kind] - (long) count * before;
            long toEnd = toStart - count;
            start += toStart * (toStart < 0 ? shortest[kind] : longest[kind]);
            end += toEnd * (toEnd < 0 ? longest[kind] : shortest[kind]);
        }
        startMost[state] = start;
        endLeast[state] = end;
    }

    /** Goes on to the numbers used in the next state. */
    private void count(int[] used) {
        int kind = 0;
        while (kind < used.length && ++used[kind] > kinds.get(kind).count()) {
            used[kind++] = 0;
        }
    }

    /** Half of the sets and the others, apart where their lengths differ most; empty for one set alone. */
    public List<List<PieceSet>> halves() {
        if (halves.isEmpty() && sets.size() > 1) {
            halves = split();
        }
        return halves;
    }

    private List<List<PieceSet>> split() {
        int widest = 0;
        for (int kind = 1; kind < shortest.length; kind++) {
            widest = longest[kind] - shortest[kind] > longest[widest] - shortest[widest] ? kind : widest;
        }
        Map<PieceSet, Long> lengths = new IdentityHashMap<>();
        for (PieceSet set : sets) {
            lengths.put(set, PieceKind.of(set, masonry).get(widest).length());
        }
        List<PieceSet> sorted = new ArrayList<>(sets);
        sorted.sort(Comparator.comparingLong(lengths::get));
        int half = sorted.size() / 2;
        return List.of(List.copyOf(sorted.subList(0, half)), List.copyOf(sorted.subList(half, sorted.size())));
    }

    /** All orders as patterns; none if there are more than {@code most}. Only for the orders of one set. */
    public List<Pattern> all(int most) {
        List<Pattern> patterns = new ArrayList<>();
        follow(0, new ArrayList<>(), most, patterns);
        return patterns.size() > most ? List.of() : patterns;
    }

    private void follow(int state, List<PieceKind> order, int most, List<Pattern> patterns) {
        if (isLast(state)) {
            patterns.add(pattern(order));
        }
        for (int kind = 0; kind < strides.length && patterns.size() <= most; kind++) {
            if (next(state, kind) >= 0) {
                order.add(kinds.get(kind));
                follow(next(state, kind), order, most, patterns);
                order.remove(order.size() - 1);
            }
        }
    }

    /** The pattern of one order. Only for the orders of one set. */
    public Pattern pattern(List<PieceKind> order) {
        return new Pattern(shape, masonry, order.stream().mapToLong(PieceKind::length).toArray(),
                order.stream().map(PieceKind::origin).toArray(Piece.Kind[]::new), sets.get(0).jointTotal());
    }

    /** How many states there are. */
    public int states() {
        return states;
    }

    /** How many kinds of pieces there are. */
    public int kinds() {
        return strides.length;
    }

    /** How many joints the run has; starts and ends are told times this number. */
    public int joints() {
        return joints;
    }

    /** The kind of the piece between a state and one that {@link #next} gave for it. */
    public PieceKind between(int state, int later) {
        for (int kind = 0; kind < strides.length; kind++) {
            if (strides[kind] == later - state && next(state, kind) == later) {
                return kinds.get(kind);
            }
        }
        throw new IllegalArgumentException("No piece leads from state %d to %d.".formatted(state, later));
    }

    /** The state after one more piece of that kind, or -1 if none is left. */
    public int next(int state, int kind) {
        return (left[state] >>> kind & 1) == 0 ? -1 : state + strides[kind];
    }

    /** Whether all pieces have been used. */
    public boolean isLast(int state) {
        return state == states - 1;
    }

    /** Whether there is a joint after the pieces used: none before the first unless the run begins with one. */
    public boolean hasJoint(int state) {
        if (state == 0) {
            return startJoints == 1;
        }
        return !isLast(state) || joints - startJoints == pieces;
    }

    /** Before where that joint begins, for any of the sets, from the start of the run and times the number of joints. */
    public long startMost(int state) {
        return startMost[state];
    }

    /** Behind where that joint ends, in the same way. */
    public long endLeast(int state) {
        return endLeast[state];
    }
}
