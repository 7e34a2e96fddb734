package org.coursewright.bond.internal;

import java.util.List;

/**
 * All orders of a set of pieces as steps between states. A state says how many pieces of each kind have been used, and
 * so where the joint after them lies; state 0 has used none, the last state all.
 */
final class PieceOrders {

    private final List<PieceKind> kinds;
    private final int[] strides;
    private final int states;
    private final long[] jointStarts;
    private final boolean[] blocked;
    private final int startJoints;
    private final int joints;
    private final int pieces;

    /** @param windows where no joint between pieces may lie */
    PieceOrders(RunShape shape, Masonry masonry, PieceSet set, Windows windows) {
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
        blocked = new boolean[states];
        Windows.Grid grid = windows.grid(joints);
        for (int state = 0; state < states; state++) {
            long sum = 0;
            int used = 0;
            for (int kind = 0; kind < strides.length; kind++) {
                sum += used(state, kind) * kinds.get(kind).length();
                used += used(state, kind);
            }
            jointStarts[state] = sum * joints + (used - 1L + startJoints) * set.jointTotal();
            blocked[state] = state > 0 && state < states - 1
                    && grid.isMet(jointStarts[state], jointStarts[state] + set.jointTotal());
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
    PieceKind between(int state, int next) {
        for (int kind = 0; kind < strides.length; kind++) {
            if (strides[kind] == next - state && next(state, kind) == next) {
                return kinds.get(kind);
            }
        }
        throw new IllegalArgumentException("No piece leads from state %d to %d.".formatted(state, next));
    }

    /** The state after one more piece of that kind, or -1 if none is left or its joint may not lie there. */
    int next(int state, int kind) {
        int next = state + strides[kind];
        return used(state, kind) < kinds.get(kind).count() && !blocked[next] ? next : -1;
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
