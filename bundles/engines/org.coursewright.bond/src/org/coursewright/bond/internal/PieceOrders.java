package org.coursewright.bond.internal;

import java.util.ArrayList;
import java.util.List;

import org.coursewright.bond.Piece;

/**
 * All orders of a set of pieces as steps between states. A state says how many pieces of each kind have been used, and
 * so where the joint after them lies; state 0 has used none, the last state all.
 */
final class PieceOrders {

    private final RunShape shape;
    private final Masonry masonry;
    private final List<PieceKind> kinds;
    private final int[] strides;
    private final int states;
    private final long[] jointStarts;
    /** By state, one bit for each kind of which there are pieces left. */
    private final int[] left;
    private final int startJoints;
    private final int joints;
    private final int pieces;
    private final long jointTotal;

    PieceOrders(RunShape shape, Masonry masonry, PieceSet set) {
        this.shape = shape;
        this.masonry = masonry;
        kinds = PieceKind.of(set, masonry);
        strides = new int[kinds.size()];
        int product = 1;
        for (int kind = 0; kind < strides.length; kind++) {
            strides[kind] = product;
            product = Math.multiplyExact(product, kinds.get(kind).count() + 1);
        }
        states = product;
        startJoints = shape.startJoints();
        joints = set.joints();
        pieces = set.pieces();
        jointStarts = new long[states];
        left = new int[states];
        jointStarts[0] = (startJoints - 1L) * set.jointTotal();
        jointTotal = set.jointTotal();
        left[0] = (1 << strides.length) - 1;
        for (int state = 1; state < states; state++) {
            int kind = 0;
            while (used(state, kind) == 0) {
                kind++;
            }
            for (int more = 0; more < strides.length; more++) {
                left[state] |= used(state, more) < kinds.get(more).count() ? 1 << more : 0;
            }
            jointStarts[state] = jointStarts[state - strides[kind]] + kinds.get(kind).length() * joints + jointTotal;
        }
    }

    /** All orders as patterns; none if there are more than {@code most}. */
    List<Pattern> all(int most) {
        List<Pattern> patterns = new ArrayList<>();
        follow(0, new ArrayList<>(), most, patterns);
        return patterns.size() > most ? List.of() : patterns;
    }

    private void follow(int state, List<PieceKind> order, int most, List<Pattern> patterns) {
        if (isLast(state)) {
            patterns.add(new Pattern(shape, masonry, order.stream().mapToLong(PieceKind::length).toArray(),
                    order.stream().map(PieceKind::origin).toArray(Piece.Kind[]::new), jointTotal));
        }
        for (int kind = 0; kind < strides.length && patterns.size() <= most; kind++) {
            if (next(state, kind) >= 0) {
                order.add(kinds.get(kind));
                follow(next(state, kind), order, most, patterns);
                order.remove(order.size() - 1);
            }
        }
    }

    /** How many states the orders of a set have at most. */
    static long states(PieceSet set) {
        long states = set.wholes() + 1L;
        for (int special : set.specials()) {
            states = Math.min(Integer.MAX_VALUE, states * (special + 1));
        }
        return Math.min(Integer.MAX_VALUE, states << Math.min(set.cuts().length, Integer.SIZE - 2));
    }

    int states() {
        return states;
    }

    private int used(int state, int kind) {
        return state / strides[kind] % (kinds.get(kind).count() + 1);
    }

    int kinds() {
        return strides.length;
    }

    /** The kind of the piece between a state and one that {@link #next} gave for it. */
    PieceKind between(int state, int later) {
        for (int kind = 0; kind < strides.length; kind++) {
            if (strides[kind] == later - state && next(state, kind) == later) {
                return kinds.get(kind);
            }
        }
        throw new IllegalArgumentException("No piece leads from state %d to %d.".formatted(state, later));
    }

    /** The state after one more piece of that kind, or -1 if none is left. */
    int next(int state, int kind) {
        return (left[state] >>> kind & 1) == 0 ? -1 : state + strides[kind];
    }

    /** By state, whether the joint after the pieces used, if it is one between pieces, meets a window. */
    boolean[] blocked(Windows.Grid windows) {
        boolean[] blocked = new boolean[states];
        for (int state = 1; state < states - 1; state++) {
            blocked[state] = windows.isMet(jointStarts[state], jointStarts[state] + jointTotal);
        }
        return blocked;
    }

    boolean isLast(int state) {
        return state == states - 1;
    }

    /** Whether there is a joint after the pieces used: none before the first unless the run begins with one. */
    boolean hasJoint(int state) {
        if (state == 0) {
            return startJoints == 1;
        }
        return !isLast(state) || joints - startJoints == pieces;
    }

    /** Where that joint begins, from the start of the run and times the number of joints. */
    long jointStart(int state) {
        return jointStarts[state];
    }
}
